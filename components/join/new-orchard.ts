/** What the first manager writes about an orchard, and what is wrong with it. */

export type NewOrchard = {
  name: string
  personName: string
  timeZone: string
  language: 'en' | 'es'
  units: 'metric' | 'us'
}

/** Both as the referee takes them (supabase: create_orchard, change_orchard). */
const longestOrchardName = 80
const longestPersonName = 60

export function faultsOf({ name, personName }: NewOrchard): ('name' | 'personName')[] {
  const faults: ('name' | 'personName')[] = []
  if (!isLine(name, longestOrchardName)) faults.push('name')
  if (!isLine(personName, longestPersonName)) faults.push('personName')
  return faults
}

function isLine(text: string, longest: number): boolean {
  const length = [...text.trim()].length
  return length > 0 && length <= longest
}

/** As the device has it. */
export function timeZoneHere(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone
}

/** All that this browser knows, with its own among them even if its list calls it otherwise. */
export function timeZones(own: string): { value: string; label: string }[] {
  const known = Intl.supportedValuesOf?.('timeZone') ?? []
  return [...new Set([own, ...known])]
    .toSorted()
    .map((value) => ({ value, label: value.replaceAll('_', ' ') }))
}

/** The United States count orchards in feet; nearly everybody else in metres. */
export function unitsIn(locale: string): NewOrchard['units'] {
  return /-US\b/.test(locale) ? 'us' : 'metric'
}
