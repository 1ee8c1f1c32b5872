/** The text of a file that some spreadsheet program wrote: UTF-8, UTF-16 with its mark, or Windows-1252. */

const encodings = ['utf-8', 'utf-16', 'windows-1252'] as const
export type Encoding = (typeof encodings)[number]

export type FileText =
  | { text: string; encoding: Encoding }
  | { text: null; why: 'is_spreadsheet' | 'not_text' }

export function textOfFile(file: Uint8Array): FileText {
  if (spreadsheets.some((mark) => beginsWith(file, mark))) {
    return { text: null, why: 'is_spreadsheet' }
  }
  const found = decoded(file)
  const start = found.text.slice(0, 10_000)
  // One stray character is told with its row; what is full of them is no text.
  const isText = (start.match(strange)?.length ?? 0) <= start.length / 100
  return isText ? found : { text: null, why: 'not_text' }
}

/** How the files of spreadsheet programs themselves begin: a ZIP archive, or the compound file before it. */
const spreadsheets = [
  [0x50, 0x4b, 0x03, 0x04],
  [0xd0, 0xcf, 0x11, 0xe0],
]

/** No table has them: what is not text has them at once. The last are those that Windows-1252 leaves free. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const strange = /[\u0000-\u0008\u000e-\u001f\u0081\u008d\u008f\u0090\u009d]/g

function decoded(file: Uint8Array): { text: string; encoding: Encoding } {
  if (beginsWith(file, [0xff, 0xfe])) return { text: decode(file, 'utf-16le'), encoding: 'utf-16' }
  if (beginsWith(file, [0xfe, 0xff])) return { text: decode(file, 'utf-16be'), encoding: 'utf-16' }
  const unmarked = unmarkedUtf16(file)
  if (unmarked) return { text: decode(file, unmarked), encoding: 'utf-16' }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(file)
    return { text, encoding: 'utf-8' }
  } catch {
    return { text: decode(file, 'windows-1252'), encoding: 'windows-1252' }
  }
}

/** Without its mark: then every other byte of a table in our letters is nothing. */
function unmarkedUtf16(file: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  const start = file.subarray(0, 1000)
  const zeros = [0, 1].map(
    (odd) => start.filter((byte, index) => index % 2 === odd && byte === 0).length
  )
  const [even = 0, odd = 0] = zeros
  const isMost = (count: number, other: number) => other === 0 && count > start.length * 0.4
  if (isMost(odd, even)) return 'utf-16le'
  return isMost(even, odd) ? 'utf-16be' : null
}

function decode(file: Uint8Array, encoding: string): string {
  return new TextDecoder(encoding).decode(file)
}

function beginsWith(file: Uint8Array, mark: readonly number[]): boolean {
  return mark.every((byte, index) => file[index] === byte)
}
