/**
 * `npm test`: everything, from a fresh clone. Installs what is missing where it can, says plainly what
 * it could not run, and ends with one line of counts. With ROWCALL_TEST_ALL=1 (as .ci/run sets it)
 * anything left out is a failure.
 */
import { spawnSync } from 'node:child_process'
import {
  chmodSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statfsSync,
  statSync,
} from 'node:fs'
import { freemem, tmpdir } from 'node:os'
import { join } from 'node:path'
import { findChromium, findPostgres } from './support/find-programs.mjs'

const root = new URL('..', import.meta.url).pathname
const temporary = mkdtempSync(join(temporaryFolder(), 'rowcall-test-'))
// PostgreSQL is somebody else where we are root, and has to come through to its own.
chmodSync(temporary, 0o711)
const counts = { passed: 0, failed: 0, skipped: 0 }
const leftOut = []
const took = []
const started = Date.now()

installPackages()
const chromium = findChromium({ install: true })
const postgres = findPostgres({ install: true })
if (!chromium) leftOut.push('the browser tests: no Chromium was found, and none could be installed')
if (!postgres)
  leftOut.push(
    'the PostgreSQL half of the SQL tests: no PostgreSQL 15 or newer was found, and none could be installed'
  )

const environment = {
  ...process.env,
  TMPDIR: temporary,
  NEXT_TELEMETRY_DISABLED: '1',
  // The build need not read all types once more.
  ROWCALL_TYPES_READ: '1',
  ...(chromium ? { PLAYWRIGHT_CHROMIUM: chromium } : {}),
  ...(postgres ? { ROWCALL_POSTGRES_BIN: postgres } : {}),
}

step('Types', ['npm', 'run', '--silent', 'types'])
step('Lint', ['npm', 'run', '--silent', 'lint'])
tally(
  'Unit, SQL and protocol',
  [
    'npx',
    'vitest',
    'run',
    '-c',
    'tests/vitest.config.ts',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${join(temporary, 'vitest.json')}`,
  ],
  readVitest
)
if (step('Build', ['npm', 'run', '--silent', 'build']) && chromium) {
  tally('Browser', ['npx', 'playwright', 'test', '-c', 'e2e/playwright.config.ts'], readPlaywright)
}
finish()

function installPackages() {
  const installed = join(root, 'node_modules/.package-lock.json')
  const lock = join(root, 'package-lock.json')
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(lock).mtimeMs) return
  if (run(['npm', 'ci', '--include=dev', '--no-fund', '--no-audit'], process.env) !== 0) {
    console.error('npm could not install the packages. Check the network and run npm test again.')
    process.exit(1)
  }
}

/** In memory where there is plenty: thousands of small commits then wait for no disk. */
function temporaryFolder() {
  const inMemory = '/dev/shm'
  if (!existsSync(inMemory)) return tmpdir()
  const { bavail, bsize } = statfsSync(inMemory)
  return Math.min(bavail * bsize, freemem()) > 8e9 ? inMemory : tmpdir()
}

function step(name, command) {
  const passed = part(name, command, environment) === 0
  counts[passed ? 'passed' : 'failed'] += 1
  if (!passed) console.error(`${name} failed.`)
  return passed
}

function tally(name, command, read) {
  const status = part(name, command, { ...environment, ROWCALL_RESULTS: temporary })
  const counted = read()
  if (!counted || counted.passed + counted.failed === 0) {
    console.error(`${name}: no test was run.`)
    counts.failed += 1
    return
  }
  counts.passed += counted.passed
  counts.failed += status !== 0 && counted.failed === 0 ? 1 : counted.failed
  counts.skipped += counted.skipped
}

/** One part of the whole, under its name; its seconds are listed at the end. */
function part(name, command, env) {
  console.log(`\n── ${name}`)
  const began = Date.now()
  const status = run(command, env)
  took.push(`${name} ${secondsSince(began)} s`)
  return status
}

function secondsSince(began) {
  return Math.round((Date.now() - began) / 1000)
}

function readVitest() {
  const report = readJson('vitest.json')
  return (
    report && {
      passed: report.numPassedTests,
      failed: report.numFailedTests,
      skipped: report.numPendingTests + report.numTodoTests,
    }
  )
}

function readPlaywright() {
  const report = readJson('playwright.json')
  return (
    report && {
      passed: report.stats.expected + report.stats.flaky,
      failed: report.stats.unexpected,
      skipped: report.stats.skipped,
    }
  )
}

function readJson(name) {
  const file = join(temporary, name)
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined
}

function run([program, ...parameters], env) {
  return (
    spawnSync(program, parameters, { cwd: root, env, stdio: ['ignore', 'inherit', 'inherit'] })
      .status ?? 1
  )
}

function finish() {
  rmSync(temporary, { recursive: true, force: true })
  for (const what of leftOut) console.log(`\nLeft out: ${what}.`)
  if (process.env.ROWCALL_TEST_ALL === '1' && (leftOut.length > 0 || counts.skipped > 0)) {
    console.error('Something was left out, and here everything has to run.')
    counts.failed += 1
  }
  console.log(`\n${secondsSince(started)} s (${took.join(' · ')})`)
  console.log(`${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`)
  process.exit(counts.failed > 0 ? 1 : 0)
}
