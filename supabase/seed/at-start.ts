/** What the host does for people once it is reachable: the demo on the first start, and ways in at each. */

import { existsSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Ready } from '../local/serve'
import { readSettings } from '../local/settings'
import { printLinks } from '../local/terminal-links'
import { terminalText } from './at-start-text'
import { loadDemo } from './demo'
import { type Link, linksAtStart } from './links'
import { keepLinks } from './links-file'
import { terminalLanguage } from './terminal'

type Started = Ready & {
  /** Without the demo (`--empty`). */
  isEmpty: boolean
}

export async function atStart({ address, engine, isNew, isEmpty }: Started): Promise<void> {
  const { dataFolder } = readSettings()
  const text = terminalText(terminalLanguage(undefined))
  const loading = join(dataFolder, 'demo-is-loading')
  if (existsSync(loading)) throw new Error(text.demoBroken(dataFolder))
  if (isNew && !isEmpty) {
    process.stdout.write(`\n${text.loadingDemo}\n`)
    writeFileSync(loading, '')
    await loadDemo(engine)
    rmSync(loading)
  }
  const links = await linksAtStart(engine)
  keepLinks(dataFolder, address, links)
  printLinks(links.map((link) => ({ label: text.seats[link.seat], url: urlOf(address, link) })))
}

function urlOf(address: string, { path }: Link): string {
  return `${address}${path}`
}
