/** A team's trees as one says them: from which tree to which, row by row, in the order of the walk. */

export type RowPiece = { from: number; to: number; trees: number }

export function rowPieces(
  trees: readonly { no: number; block: number; row: number }[]
): RowPiece[] {
  const pieces: RowPiece[] = []
  for (const [at, { no, block, row }] of trees.entries()) {
    const [piece, before] = [pieces.at(-1), trees[at - 1]]
    if (piece && before?.block === block && before.row === row) {
      piece.to = no
      piece.trees++
    } else pieces.push({ from: no, to: no, trees: 1 })
  }
  return pieces
}
