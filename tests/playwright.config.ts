import { defineConfig } from 'playwright/test';
import { quietFlags } from '../electron/launch/browser.mjs';

const executablePath = process.env['FISTMELE_BROWSER'];

/** The journeys of people at the bench, in a real Chromium against the built host. tests/run.mjs finds the browser and sums the results. */
export default defineConfig({
  testDir: 'e2e',
  outputDir: '../test-results',
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  timeout: 120_000,
  // No test is about speed: on a busy machine a window opens late, and a wait ends as soon as what is waited for is there.
  expect: { timeout: 20_000 },
  // A run that hangs ends by itself, and says so.
  globalTimeout: 30 * 60_000,
  reporter: [['list'], ['json', { outputFile: '../.cache/results/playwright.json' }]],
  use: {
    browserName: 'chromium',
    viewport: { width: 1280, height: 820 },
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    // A drawing that glides to its figure is drawn seven times over; the journeys are about what it says. Motion has a test of its own.
    contextOptions: { reducedMotion: 'reduce' },
    launchOptions: { args: [...quietFlags], ...(executablePath ? { executablePath } : {}) },
    screenshot: 'only-on-failure',
    // A trace takes the whole page down at every step: nearly half of all the work, for a failure that seldom comes. Ask for it where one does.
    trace: process.env['FISTMELE_TRACE'] ? 'retain-on-failure' : 'off',
  },
});
