/** As somebody writes a name again: capitals, accents and spaces between do not tell two people apart. */
export function isSameName(typed: string, name: string): boolean {
  return plain(typed) === plain(name) && plain(typed) !== ''
}

function plain(name: string): string {
  return name.normalize('NFD').replace(/\p{M}/gu, '').replace(/\s+/g, ' ').trim().toLowerCase()
}
