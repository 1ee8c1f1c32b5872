/** Finds a Chromium and a PostgreSQL for the tests, and installs them where the system's package manager can. */
import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'

const chromiums = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
]

/** Path of a browser, or undefined. */
export function findChromium({ install = false } = {}) {
  const found = [process.env.PLAYWRIGHT_CHROMIUM, ...chromiums, playwrightsOwn()].find(
    (path) => path && existsSync(path)
  )
  if (found || !install) return found
  if (!aptInstall('chromium'))
    spawnSync('npx', ['playwright', 'install', 'chromium'], { stdio: 'inherit' })
  return findChromium()
}

/** Folder with initdb and postgres of version 15 or newer, or undefined. */
export function findPostgres({ install = false } = {}) {
  const found = [process.env.ROWCALL_POSTGRES_BIN, ...debianFolders(), pgConfigFolder()].find(
    (folder) => folder && existsSync(join(folder, 'initdb')) && majorOf(folder) >= 15
  )
  if (found || !install) return found
  return aptInstall('postgresql') ? findPostgres() : undefined
}

function playwrightsOwn() {
  const found = spawnSync(
    process.execPath,
    ['-e', "import('@playwright/test').then((m) => console.log(m.chromium.executablePath()))"],
    { encoding: 'utf8' }
  )
  return found.stdout?.trim()
}

function debianFolders() {
  const base = '/usr/lib/postgresql'
  if (!existsSync(base)) return []
  return readdirSync(base)
    .sort((a, b) => Number(a) - Number(b))
    .map((version) => join(base, version, 'bin'))
}

function pgConfigFolder() {
  return spawnSync('pg_config', ['--bindir'], { encoding: 'utf8' }).stdout?.trim()
}

function majorOf(folder) {
  const answer =
    spawnSync(join(folder, 'postgres'), ['--version'], { encoding: 'utf8' }).stdout ?? ''
  return Number(answer.match(/(\d+)/)?.[1] ?? 0)
}

function aptInstall(name) {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get'))
    return false
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  console.log(`Installing ${name}…`)
  spawnSync('apt-get', ['update', '-qq'], { env, stdio: 'inherit' })
  return (
    spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', name], {
      env,
      stdio: ['ignore', 'ignore', 'inherit'],
    }).status === 0
  )
}
