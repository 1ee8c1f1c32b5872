/** What was written about rows and the first label, and what is wrong with it. */

export type Written = { fromRow: string; toRow: string; first: string }

export type LabelsAsked =
  | { state: 'whole'; fromRow: number; toRow: number; first: number }
  | { state: 'wrong'; field: 'rows' | 'first' }

export function readLabels(
  written: Written,
  rows: { from: number; to: number },
  onSheet: number
): LabelsAsked {
  const [fromRow, toRow] = [numberIn(written.fromRow, rows), numberIn(written.toRow, rows)]
  if (fromRow === null || toRow === null || fromRow > toRow)
    return { state: 'wrong', field: 'rows' }
  const first = numberIn(written.first, { from: 1, to: onSheet })
  return first === null
    ? { state: 'wrong', field: 'first' }
    : { state: 'whole', fromRow, toRow, first }
}

function numberIn(text: string, { from, to }: { from: number; to: number }): number | null {
  const bare = text.trim()
  if (!/^\d{1,5}$/.test(bare)) return null
  const number = Number(bare)
  return number >= from && number <= to ? number : null
}
