/**
 * The emergency number where an orchard lies, as far as its time zone tells the country. Proposed only: a
 * manager writes it down, and a card without one says where this comes from.
 */

import { published, type Source } from './source'

export type EmergencyNumber = { number: string; source: Source }

/** Null: this list does not know the country. */
export function emergencyNumberIn(timeZone: string): EmergencyNumber | null {
  return countries.find(({ zones }) => zones.includes(timeZone)) ?? null
}

function words(text: string): string[] {
  return text.trim().split(/\s+/)
}

const countries: readonly (EmergencyNumber & { zones: readonly string[] })[] = [
  {
    number: '112',
    source: published('Directive (EU) 2018/1972, Article 109'),
    zones: words(`
      Africa/Ceuta Asia/Famagusta Asia/Nicosia Atlantic/Azores Atlantic/Canary Atlantic/Madeira
      Europe/Amsterdam Europe/Athens Europe/Berlin Europe/Bratislava Europe/Brussels Europe/Bucharest
      Europe/Budapest Europe/Busingen Europe/Copenhagen Europe/Dublin Europe/Helsinki Europe/Lisbon
      Europe/Ljubljana Europe/Luxembourg Europe/Madrid Europe/Malta Europe/Mariehamn Europe/Paris
      Europe/Prague Europe/Riga Europe/Rome Europe/Sofia Europe/Stockholm Europe/Tallinn Europe/Vienna
      Europe/Vilnius Europe/Warsaw Europe/Zagreb`),
  },
  {
    number: '911',
    source: published('47 U.S.C. §251(e)(3)'),
    zones: words(`
      America/Adak America/Anchorage America/Boise America/Chicago America/Denver America/Detroit
      America/Indiana/Indianapolis America/Juneau America/Kentucky/Louisville America/Los_Angeles
      America/Menominee America/New_York America/Nome America/North_Dakota/Center America/Phoenix
      America/Sitka Pacific/Honolulu`),
  },
  {
    number: '999',
    source: published('Ofcom General Conditions, A3'),
    zones: ['Europe/London'],
  },
]
