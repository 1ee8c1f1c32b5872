/**
 * The front door of `npm start` and its sisters, in plain JavaScript: it must run on a fresh clone, before
 * anything is installed. Installs and builds what is missing or old, then becomes the host.
 */
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))
const isDevelopment = process.argv.includes('--dev')
const isServing = !['--backup', '--restore'].includes(process.argv[2] ?? '')

refuseOldNode()
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
  whenChanged(
    'pages',
    ['app', 'components', 'lib', 'supabase/local', 'proxy.ts', 'next.config.mjs'],
    () => {
      console.log('Building…')
      run('npm', ['run', '--silent', 'build'], 'The build failed: see the lines above.')
    }
  )
}

function buildHost() {
  whenChanged('host', ['lib', 'supabase/local'], () =>
    run(
      process.execPath,
      [join(root, 'supabase/local/build.mjs')],
      'The build failed: see the lines above.'
    )
  )
}

/** Compares what is built by content, since a fresh clone gives every file the same time. */
function whenChanged(name, sources, build) {
  const folder = join(root, 'supabase/local/dist')
  const stamp = join(folder, `${name}.built`)
  const now = fingerprintOf([...sources, 'package-lock.json', 'tsconfig.json'])
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === now) return
  build()
  mkdirSync(folder, { recursive: true })
  writeFileSync(stamp, now)
}

function fingerprintOf(sources) {
  const hash = createHash('sha256')
  for (const file of sources.flatMap(filesIn))
    hash.update(file).update(readFileSync(join(root, file)))
  return hash.digest('hex')
}

function filesIn(path) {
  const full = join(root, path)
  if (!existsSync(full)) return []
  if (!statSync(full).isDirectory()) return [path]
  return readdirSync(full, { withFileTypes: true })
    .filter(({ name }) => name !== 'dist' && name !== 'node_modules')
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap(({ name }) => filesIn(join(path, name)))
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
