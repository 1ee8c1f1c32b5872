/** Degrees as they are typed into instruments that want minutes. */

/** 38.1234 is 38° 7.404′; three digits of a minute are under two metres. The sign is said in a word. */
export function degreesAndMinutes(degrees: number): { degrees: number; minutes: string } {
  const thousandths = Math.round(Math.abs(degrees) * 60_000)
  return {
    degrees: Math.floor(thousandths / 60_000),
    minutes: ((thousandths % 60_000) / 1000).toFixed(3),
  }
}
