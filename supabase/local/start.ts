/** What `npm start`, `npm run dev`, `npm run backup` and `npm run restore` do once everything is installed. */
import { messageOf } from './log'
import { readSettings } from './settings'

const [, , ...words] = process.argv
const isDevelopment = words.includes('--dev')
Object.assign(process.env, {
  NODE_ENV: isDevelopment ? 'development' : 'production',
  NEXT_TELEMETRY_DISABLED: '1',
})

try {
  const settings = readSettings()
  if (words[0] === '--backup' || words[0] === '--restore') {
    const { backupCommand, restoreCommand } = await import('./keep/commands')
    const [what, file] = words
    if (what === '--backup') await backupCommand(settings, file)
    else await restoreCommand(settings, file)
  } else {
    const [{ serve }, { atStart }] = await Promise.all([
      import('./serve'),
      import('../seed/at-start'),
    ])
    const isEmpty = words.includes('--empty')
    await serve({ settings, isDevelopment, onReady: (ready) => atStart({ ...ready, isEmpty }) })
  }
} catch (error) {
  process.stderr.write(`${sentenceOf(error)}\n`)
  process.exit(1)
}

function sentenceOf(error: unknown): string {
  const { code, port } = error as { code?: unknown; port?: unknown }
  if (code === 'EADDRINUSE') {
    return `Something else is listening on port ${port}. Stop it, or set PORT to another number.`
  }
  if (code === 'EACCES' && port !== undefined) {
    return `This user may not listen on port ${port}. Set PORT to a number above 1024.`
  }
  if (code === 'EADDRNOTAVAIL') {
    return `This machine does not have the address that HOST names. Leave HOST out to be reached on all of them.`
  }
  if (code === 'ENOSPC' || code === '53100') {
    return 'The disk that holds the data is full. Make room, or set ROWCALL_DATA to a folder on another one.'
  }
  return messageOf(error)
}
