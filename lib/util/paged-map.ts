/**
 * A map by number that is never changed in place. What is made from it shares every page in which
 * nothing changed: a change costs its page and not all of a hundred thousand, and what two of them
 * differ in is found page by page.
 */

const pageSize = 256

type Page<Value> = readonly (Value | undefined)[]

export class PagedMap<Value extends object> {
  private constructor(private readonly pages: readonly (Page<Value> | undefined)[]) {}

  static empty<Value extends object>(): PagedMap<Value> {
    return new PagedMap<Value>([])
  }

  /** Undefined, too, for what is no number of anything. */
  get(no: number): Value | undefined {
    return this.pages[Math.floor(no / pageSize)]?.[no % pageSize]
  }

  /** Itself where all of these are there already. */
  with(entries: Iterable<readonly [number, Value]>): PagedMap<Value> {
    const fresh = new Map<number, (Value | undefined)[]>()
    for (const [no, value] of entries) {
      if (this.get(no) === value) continue
      const at = Math.floor(no / pageSize)
      const page = fresh.get(at) ?? [...(this.pages[at] ?? [])]
      page[no % pageSize] = value
      fresh.set(at, page)
    }
    if (fresh.size === 0) return this
    const pages = [...this.pages]
    for (const [at, page] of fresh) pages[at] = page
    return new PagedMap(pages)
  }

  /** Numbers that have another value here than there, or one only in one of the two. */
  changedSince(before: PagedMap<Value>): number[] {
    const changed: number[] = []
    const length = Math.max(this.pages.length, before.pages.length)
    for (let at = 0; at < length; at++) {
      const [page, was] = [this.pages[at], before.pages[at]]
      if (page === was) continue
      for (let spot = 0; spot < pageSize; spot++)
        if (page?.[spot] !== was?.[spot]) changed.push(at * pageSize + spot)
    }
    return changed
  }
}
