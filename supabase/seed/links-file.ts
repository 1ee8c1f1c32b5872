/** The host's links for scripts on the same machine and of the same user: `npm run demo:crew` reads them. */

import { chmodSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

import type { Link, SeatName } from './links'

export function keepLinks(dataFolder: string, address: string, links: readonly Link[]): void {
  const file = join(dataFolder, 'links.json')
  const urls = Object.fromEntries(links.map(({ seat, path }) => [seat, `${address}${path}`]))
  writeFileSync(file, `${JSON.stringify(urls, null, 2)}\n`, { mode: 0o600 })
  // Also when it was there already.
  chmodSync(file, 0o600)
}

/** Null: no host has been started on these data, or it printed no such link. */
export function keptLink(dataFolder: string, seat: SeatName): string | null {
  try {
    const kept: unknown = JSON.parse(readFileSync(join(dataFolder, 'links.json'), 'utf8'))
    const url = (kept as Partial<Record<SeatName, unknown>>)[seat]
    return typeof url === 'string' ? url : null
  } catch {
    return null
  }
}
