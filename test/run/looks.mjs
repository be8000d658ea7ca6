import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright';
import { build, preview } from 'vite';
import { findBrowser } from './findBrowser.mjs';

/** Takes the README's pictures from the built app: `npm run looks`. Made by one Chromium, looked at by a person. */
const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const pictures = path.join(root, 'e2e/pictures');
mkdirSync(pictures, { recursive: true });

await build({ root, logLevel: 'warn' });
const server = await preview({ root, preview: { port: 0, host: '127.0.0.1' } });
const address = server.resolvedUrls?.local[0];
if (address === undefined) throw new Error('The built app could not be served.');
const browser = await chromium.launch({
  executablePath: findBrowser(),
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
});
try {
  const screen = await browser.newPage({ viewport: { width: 1440, height: 900 }, locale: 'en-GB' });
  await screen.goto(address);
  await screen.getByRole('list', { name: 'Parts of the drawing' }).getByRole('button').first().waitFor();
  await screen.screenshot({ path: path.join(pictures, 'screen.png') });
  await screen.getByRole('tab', { name: 'Draw' }).click();
  await screen.getByRole('button', { name: /^Side view and saddle/ }).click();
  await screen.getByRole('dialog').screenshot({ path: path.join(pictures, 'side.png') });
  await screen.keyboard.press('Escape');
  await screen.getByRole('button', { name: 'Edit the outline freely' }).click();
  await screen.screenshot({ path: path.join(pictures, 'draw.png') });
  await screen.getByRole('tab', { name: 'Place' }).click();
  for (const [label = '', text = ''] of [
    ['Edge to string at the last fret, treble', '6.22'],
    ['Edge to string at the last fret, bass', '4.80'],
    ['Octave stick, string 1, treble: over or under', '0.61'],
    ['Octave stick, string 6, bass: over or under', '0.33'],
    ['12th fret ends to front corners, same side: bass longer by', '-0.55'],
  ]) {
    await screen.getByRole('textbox', { name: label, exact: true }).fill(text);
    await screen.getByRole('textbox', { name: label, exact: true }).press('Enter');
  }
  await screen.getByRole('heading', { name: 'Move it' }).waitFor();
  await screen.screenshot({ path: path.join(pictures, 'place.png') });
  await screen.getByRole('tab', { name: 'Record' }).click();
  await screen.getByText('in the library').waitFor();
  await screen.getByRole('button', { name: 'New string-up' }).click();
  await screen.screenshot({ path: path.join(pictures, 'record.png') });
  // High enough for the whole page of the template to be seen at once.
  const sheet = await browser.newPage({ viewport: { width: 1600, height: 1400 }, locale: 'en-GB' });
  await sheet.goto(address);
  await sheet.getByRole('tab', { name: 'Print' }).click();
  await sheet.getByRole('img', { name: /^Page 1/ }).screenshot({ path: path.join(pictures, 'template.png') });
} finally {
  await browser.close();
  await server.close();
}
console.info(`Pictures are in ${path.relative(process.cwd(), pictures)}.`);
