/** A tree's name, as it is written on its tag and said over the radio. */

export type TreePlace = {
  /** The block's letter or short sign. */
  block: string
  row: number
  /** Its place in the row, counted from the tagged end. */
  place: number
}

/** "S 7·14" */
export function treeTag({ block, row, place }: TreePlace): string {
  return `${block} ${row}·${place}`
}
