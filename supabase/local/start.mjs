/**
 * The front door of `npm start` and its sisters, in plain JavaScript: it must run on a fresh clone, before
 * anything is installed. Installs and builds what is missing or old, then becomes the host.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { isBuilt } from './built.mjs'

const root = fileURLToPath(new URL('../..', import.meta.url))
const isDevelopment = process.argv.includes('--dev')
const isServing = !['--backup', '--restore'].includes(process.argv[2] ?? '')

refuseOldNode()
stopWithNpm()
installPackages()
if (isDevelopment) {
  await import('tsx/esm/api').then(({ register }) => register())
  await import('./start.ts')
} else {
  if (isServing) buildAll()
  else buildHost()
  await import('./dist/start.js')
}

function refuseOldNode() {
  const [major, minor] = process.versions.node.split('.').map(Number)
  if (major > 20 || (major === 20 && minor >= 19)) return
  fail(`Node ${process.versions.node} is too old. Install Node 20.19 or newer, then start again.`)
}

/**
 * npm passes a signal on to the shell it started us in, and that shell dies of it without a word. "exec" in
 * the script would do the same, but not on Windows.
 */
function stopWithNpm() {
  const shell = process.ppid
  if (!process.env.npm_lifecycle_event || process.platform === 'win32') return
  setInterval(() => {
    if (process.ppid !== shell) process.kill(process.pid, 'SIGTERM')
  }, 500).unref()
}

function installPackages() {
  const installed = join(root, 'node_modules/.package-lock.json')
  const lock = join(root, 'package-lock.json')
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(lock).mtimeMs) return
  console.log('Installing the packages…')
  // Also where NODE_ENV is production: the build needs them.
  run(
    'npm',
    ['ci', '--include=dev'],
    'The packages could not be installed. Check the network, then start again.'
  )
}

function buildAll() {
  if (isBuilt('pages') && isBuilt('host')) return
  console.log('Building…')
  run('npm', ['run', '--silent', 'build'], 'The build failed: see the lines above.')
}

function buildHost() {
  if (isBuilt('host')) return
  const script = join(root, 'supabase/local/build.mjs')
  run(process.execPath, [script, '--host-only'], 'The build failed: see the lines above.')
}

function run(program, parameters, sentence) {
  const env = { ...process.env, NEXT_TELEMETRY_DISABLED: '1' }
  const { status } = spawnSync(program, parameters, {
    cwd: root,
    env,
    stdio: 'inherit',
    // npm is a script on Windows.
    shell: process.platform === 'win32' && program === 'npm',
  })
  if (status !== 0) fail(sentence)
}

function fail(sentence) {
  console.error(sentence)
  process.exit(1)
}
