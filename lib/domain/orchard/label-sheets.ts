/**
 * Sheets of labels, in millimetres. Sizes as they are sold everywhere; how far apart and where on the
 * sheet they lie is common practice, no source, which is why a test sheet on plain paper comes first.
 */

export type LabelSheet = {
  name: SheetName
  paper: Paper
  columns: number
  rows: number
  widthMm: number
  heightMm: number
  /** Between columns; rows touch. */
  gapMm: number
}

export const papers = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
}
export type Paper = keyof typeof papers

export const sheetNames = [
  'a4_cards',
  'a4_99x68',
  'a4_70x37',
  'a4_64x38',
  'letter_cards',
  'letter_102x51',
  'letter_67x25',
] as const
export type SheetName = (typeof sheetNames)[number]

type Grid = Omit<LabelSheet, 'name' | 'paper'>

const grids: Record<SheetName, Grid> = {
  // Cards fill plain paper and are cut apart.
  a4_cards: { columns: 2, rows: 4, widthMm: 105, heightMm: 74.25, gapMm: 0 },
  a4_99x68: { columns: 2, rows: 4, widthMm: 99.1, heightMm: 67.7, gapMm: 2.5 },
  a4_70x37: { columns: 3, rows: 8, widthMm: 70, heightMm: 37, gapMm: 0 },
  a4_64x38: { columns: 3, rows: 7, widthMm: 63.5, heightMm: 38.1, gapMm: 2.5 },
  letter_cards: { columns: 2, rows: 4, widthMm: 107.95, heightMm: 69.85, gapMm: 0 },
  letter_102x51: { columns: 2, rows: 5, widthMm: 101.6, heightMm: 50.8, gapMm: 4.8 },
  letter_67x25: { columns: 3, rows: 10, widthMm: 66.7, heightMm: 25.4, gapMm: 3.2 },
}

export function sheetOf(name: SheetName): LabelSheet {
  return { name, paper: name.startsWith('a4') ? 'a4' : 'letter', ...grids[name] }
}

export function labelsOnSheet({ columns, rows }: Pick<LabelSheet, 'columns' | 'rows'>): number {
  return columns * rows
}

/** What is left of the sheet is shared by both sides. */
export function sheetMargins(sheet: LabelSheet): { leftMm: number; topMm: number } {
  const { widthMm, heightMm } = papers[sheet.paper]
  const { columns, rows, gapMm } = sheet
  return {
    leftMm: (widthMm - columns * sheet.widthMm - (columns - 1) * gapMm) / 2,
    topMm: (heightMm - rows * sheet.heightMm) / 2,
  }
}

/** Dealt out to sheets, row by row; `first` is the label (from 1) at which a half-used sheet begins. Null: used before. */
export function onSheets<Item>(
  items: readonly Item[],
  sheet: Pick<LabelSheet, 'columns' | 'rows'>,
  first: number
): (Item | null)[][] {
  const each = labelsOnSheet(sheet)
  const places = [...Array.from({ length: first - 1 }, () => null), ...items]
  const count = items.length === 0 ? 0 : Math.ceil(places.length / each)
  return Array.from({ length: count }, (_, at) => places.slice(at * each, (at + 1) * each))
}
