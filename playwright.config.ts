import { defineConfig } from '@playwright/test';
import { locateBrowser } from './test/run/findBrowser.mjs';
import { freePort } from './test/run/freePort.mjs';

// Worker processes read this file again: what the first reading found is handed on in the environment.
process.env.SADDLEMARK_PORT ??= String(await freePort());
process.env.SADDLEMARK_BROWSER ??= locateBrowser() ?? '';

const address = `http://127.0.0.1:${process.env.SADDLEMARK_PORT}/`;
const browser = process.env.SADDLEMARK_BROWSER;

/** Journeys against the built app; `npm run build` comes first. Without a browser found, Playwright says what to do. */
export default defineConfig({
  testDir: 'e2e',
  outputDir: 'reports/journeys',
  workers: 1,
  fullyParallel: false,
  retries: 0,
  forbidOnly: true,
  timeout: 60_000,
  globalTimeout: 1_200_000,
  reporter: [['list'], ['json', { outputFile: 'reports/journeys.json' }]],
  use: {
    browserName: 'chromium',
    baseURL: address,
    locale: 'en-GB',
    timezoneId: 'Europe/Lisbon',
    colorScheme: 'light',
    viewport: { width: 1440, height: 900 },
    acceptDownloads: true,
    // Keeping the whole app for offline use is a journey of its own.
    serviceWorkers: 'block',
    screenshot: 'only-on-failure',
    launchOptions: {
      ...(browser ? { executablePath: browser } : {}),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--no-first-run',
      ],
    },
  },
  webServer: {
    command: `node node_modules/vite/bin/vite.js preview --host 127.0.0.1 --strictPort --port ${process.env.SADDLEMARK_PORT}`,
    url: address,
    reuseExistingServer: false,
  },
});
