/** Corners are called by letters: A to Z, then A1, B1, … */
export function cornerLetter(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26))
  return index < 26 ? letter : `${letter}${Math.floor(index / 26)}`
}
