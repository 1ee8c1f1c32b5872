/** The number of a tree as an address has it; null for anything that is no number of a tree. */
export function treeNumber(text: string | string[] | undefined): number | null {
  return typeof text === 'string' && /^[1-9]\d{0,8}$/.test(text) ? Number(text) : null
}
