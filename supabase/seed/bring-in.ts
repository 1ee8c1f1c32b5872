/** `npm run bring-in -- trees.csv --link <link>`: any orchard's inventory, by the public functions. */

import { parseArgs } from 'node:util'

import { bringIn } from './bring-in-run'
import { bringInText } from './bring-in-text'
import { type End, ends, said } from './ends'
import { terminalLanguage } from './terminal'

const options = {
  link: { type: 'string' },
  name: { type: 'string' },
  manager: { type: 'string' },
  'time-zone': { type: 'string' },
  units: { type: 'string' },
  server: { type: 'string' },
  language: { type: 'string' },
  help: { type: 'boolean' },
} as const

process.exitCode = await run()

async function run(): Promise<End> {
  try {
    const { values, positionals } = parseArgs({ options, allowPositionals: true })
    const { link, server, name, manager, 'time-zone': timeZone } = values
    const language = terminalLanguage(values.language)
    const text = bringInText(language)
    const [file] = positionals
    if (values.help) return said(print, text.usage, ends.allIn)
    if (!file || !link) return said(print, text.usage, ends.missing)
    return await bringIn(
      {
        file,
        link,
        language,
        units: values.units === 'us' ? 'us' : 'metric',
        ...(server && { server }),
        ...(name && { name }),
        ...(manager && { manager }),
        ...(timeZone && { timeZone }),
      },
      print
    )
  } catch (error) {
    const told = error instanceof Error ? error.message : String(error)
    return said(print, bringInText(terminalLanguage(undefined)).unknownOption(told), ends.missing)
  }

  function print(line: string): void {
    process.stdout.write(`${line}\n`)
  }
}
