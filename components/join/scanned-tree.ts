/** The tree whose code somebody scanned before they were in: they get there once they are. */

import { routes } from '@/lib/routes'

const key = 'rowcall-scanned-tree'

/** The camera opens the join link in a page of its own, so this outlives the page, but not the way to the meeting point. */
const keptForMs = 30 * 60_000

/** Keeps it if it is the address of a tree. Says which tree that is. */
export function keepScannedTree(path: string, now: number): number | null {
  const tree = treeIn(path)
  if (tree !== null) localStorage.setItem(key, JSON.stringify({ tree, at: now }))
  return tree
}

/** Once: the next time they go where they belong. */
export function takeScannedTree(now: number): string | null {
  const kept = localStorage.getItem(key)
  localStorage.removeItem(key)
  const { tree, at } = read(kept)
  return tree !== null && now - at < keptForMs ? routes.tree(tree) : null
}

function treeIn(path: string): number | null {
  const [, no] = /^\/tree\/([1-9]\d{0,8})$/.exec(path) ?? []
  return no === undefined ? null : Number(no)
}

/** Anything may stand in the storage of a browser. */
function read(kept: string | null): { tree: number | null; at: number } {
  try {
    const { tree, at } = JSON.parse(kept ?? '{}')
    return { tree: treeIn(routes.tree(tree)), at: Number(at) }
  } catch {
    return { tree: null, at: 0 }
  }
}
