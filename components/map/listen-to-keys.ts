import type { Tree } from '@/lib/domain/orchard/types'
import { type Arrow, arrows, treeTowards } from '@/lib/map/focus'
import type { Scene } from '@/lib/map/scene'

type Keys = {
  scene: Scene
  /** The tree the focus comes to first. */
  startAt: number | null
  focus: (tree: Tree | null) => void
  choose: (tree: Tree) => void
  /** Nearer or farther, with this tree where it is. */
  zoom: (by: 1 | -1, tree: Tree | null) => void
}

/** With and without shift, on either part of a keyboard. */
const zooms: Readonly<Record<string, 1 | -1>> = { '+': 1, '=': 1, '-': -1, _: -1 }

/** Arrows walk from tree to tree, Enter and space choose, plus and minus zoom. Returns how to stop listening. */
export function listenToKeys(element: HTMLElement, { scene, startAt, focus, choose, zoom }: Keys) {
  let focused: Tree | null = null
  const moveTo = (tree: Tree | null) => {
    focused = tree
    focus(tree)
  }
  const treeOf = (no: number | null) => scene.trees[scene.indexOf.get(no ?? Number.NaN) ?? 0]

  // Only a keyboard's focus shows a ring; a thumb on the map needs none.
  const onFocus = () =>
    element.matches(':focus-visible') && moveTo(focused ?? treeOf(startAt) ?? null)
  const onBlur = () => focus(null)
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key in arrows)
      moveTo(treeTowards(scene, focused?.no ?? startAt, event.key as Arrow) ?? null)
    else if ((event.key === 'Enter' || event.key === ' ') && focused) choose(focused)
    // With another key held down it is the browser's own zoom.
    else if (zooms[event.key] && !event.ctrlKey && !event.metaKey)
      zoom(zooms[event.key] ?? 1, focused)
    else return
    event.preventDefault()
  }

  element.tabIndex = 0
  element.setAttribute('role', 'application')
  element.addEventListener('focus', onFocus)
  element.addEventListener('blur', onBlur)
  element.addEventListener('keydown', onKeyDown)
  return () => {
    element.removeEventListener('focus', onFocus)
    element.removeEventListener('blur', onBlur)
    element.removeEventListener('keydown', onKeyDown)
  }
}
