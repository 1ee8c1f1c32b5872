/** How a row is named where rows are keys. */
export function rowKey(block: number, row: number): string {
  return `${block}:${row}`
}
