/** A number as people write it in a table: a point or a comma before the decimals, never for thousands. */
export function numberIn(text: string): number | null {
  const plain = text.replace(/[\s\u00a0\u202f]/g, '').replace(/^\u2212/, '-')
  return /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(plain) ? Number(plain.replace(',', '.')) : null
}

/** Degrees, with the quarter of the sky after them if somebody wrote it: "97.9 W", "97,9 O" (oeste). */
export function degreesIn(text: string, negative: string): number | null {
  const [, digits = '', quarter = ''] = text.match(/^(.*?)\s*°?\s*([nsewo]?)$/i) ?? []
  const value = numberIn(digits)
  if (value === null || quarter === '') return value
  return negative.includes(quarter.toLowerCase()) ? -Math.abs(value) : Math.abs(value)
}
