/** A tree and the way to it, as one person tells another: so that the right tree is claimed. */

import type { Neighbour, PlaceInWords } from '@/lib/domain/planning/place-in-words'
import type { Way } from '@/lib/domain/planning/way'
import type { Format } from './format'
import type { Messages } from './messages'
import { capitalised, speciesWords } from './species'

/** "Row 7, fourth from the tagged end. A cherry, between two plums." */
export function placeSentences(text: Messages, format: Format, place: PlaceInWords): string {
  const { nextTree } = text
  const tree = capitalised(speciesWords(text, place.species).a)
  const where = nextTree.rowAndPlace(place.row, format.ordinal(place.nth))
  return `${where} ${standing(text, tree, place)}`
}

function standing(text: Messages, tree: string, { left, right }: PlaceInWords): string {
  const { nextTree } = text
  if (left.kind === 'row_end' && right.kind === 'row_end') return nextTree.aloneInRow(tree)
  if (left.kind === 'gap' && right.kind === 'gap') return nextTree.betweenTwo(tree, nextTree.gaps)
  if (left.kind === 'tree' && right.kind === 'tree' && left.species === right.species)
    return nextTree.betweenTwo(tree, speciesWords(text, left.species).many)
  return nextTree.leftAndRight(tree, neighbour(text, left), neighbour(text, right))
}

function neighbour(text: Messages, beside: Neighbour): string {
  switch (beside.kind) {
    case 'tree':
      return speciesWords(text, beside.species).a
    case 'gap':
      return text.nextTree.gap
    case 'row_end':
      return text.nextTree.rowEnd
  }
}

/** "Along row 7, away from the tagged end, 6 trees on, on your left" */
export function waySentence({ nextTree }: Messages, way: Way): string {
  const stretch = [
    nextTree.towards[way.towards](way.alongRow),
    way.trees > 0 ? nextTree.treesOn(way.trees) : undefined,
    nextTree.side[way.side],
  ]
  const along = `${stretch.filter(Boolean).join(', ')}.`
  return way.start === 'here' ? along : `${nextTree.start[way.start]} ${along}`
}

/** "46 m, 61 paces"; how long it takes only where that is not at once. */
export function wayLength({ nextTree }: Messages, format: Format, way: Way): string {
  const distance = format.distance(way.metres)
  const paces = nextTree.paces(way.paces)
  return way.minutes < 2
    ? nextTree.way(distance, paces)
    : nextTree.wayFor(distance, paces, format.duration(way.minutes))
}
