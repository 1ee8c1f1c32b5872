/** Remembers the last result of something that is costly to work out from a view. */

import type { View } from './view'

type Key = keyof View

/** Worked out again only when one of these parts of the view is another one; `before` is the last time. */
export function fromParts<Parts extends readonly Key[], Result>(
  parts: Parts,
  workOut: (
    view: Pick<View, Parts[number]>,
    before: { view: Pick<View, Parts[number]>; result: Result } | null
  ) => Result
): (view: Pick<View, Parts[number]>) => Result {
  let last: { view: Pick<View, Parts[number]>; result: Result } | null = null
  return (view) => {
    const known = last
    if (known && parts.every((part: Parts[number]) => known.view[part] === view[part])) {
      return known.result
    }
    const result = workOut(view, known)
    last = { view, result }
    return result
  }
}
