import { join } from 'node:path'
import { defineConfig } from '@playwright/test'

const results = process.env.ROWCALL_RESULTS

/** Which browser to use: ours if told, else Playwright's own. */
const executablePath = process.env.PLAYWRIGHT_CHROMIUM ?? '/usr/bin/chromium'

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.e2e.ts',
  globalSetup: './support/global-setup.ts',
  // Each journey has an orchard of its own; two at once take two thirds of the time on two cores.
  fullyParallel: true,
  workers: 2,
  timeout: process.env.CI ? 180_000 : 90_000,
  // A second try where other work may take the processor; it is listed as flaky, not hidden.
  retries: process.env.CI ? 1 : 0,
  expect: { timeout: 10_000 },
  outputDir: '../test-results',
  reporter: results
    ? [['line'], ['json', { outputFile: join(results, 'playwright.json') }]]
    : [['line']],
  use: {
    // A trace of every test takes a tenth of the run's processor time; by hand: --trace on.
    trace: 'on-first-retry',
    screenshot: 'only-on-failure',
    // Long enough for a busy machine, short enough to hear soon of a button that never comes.
    actionTimeout: 15_000,
    launchOptions: {
      executablePath,
      args: [
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      ],
    },
  },
})
