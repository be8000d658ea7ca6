import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Resvg } from '@resvg/resvg-js';

const folder = new URL('../../public/icons/', import.meta.url);

/** The drawing with its ground to every edge and the lines within the middle 80 %, which no mask cuts into. */
const whole = (/** @type {string} */ svg) =>
  svg
    .replace(
      /<rect [^>]*\/>/,
      '<rect width="96" height="96" fill="#f6f2e8"/><g transform="translate(9.6 9.6) scale(0.8)">',
    )
    .replace('</svg>', '</g></svg>');

/**
 * The icons as pictures, by their names in public/icons, drawn from the one SVG there.
 * @returns {Record<string, Uint8Array>}
 */
export const iconPictures = () => {
  const svg = readFileSync(new URL('saddlemark.svg', folder), 'utf8');
  const png = (/** @type {string} */ text, /** @type {number} */ size) =>
    new Resvg(text, { fitTo: { mode: 'width', value: size }, font: { loadSystemFonts: false } }).render().asPng();
  return Object.fromEntries(
    [192, 512].flatMap((size) => [
      [`saddlemark-${size}.png`, png(svg, size)],
      [`whole-${size}.png`, png(whole(svg), size)],
    ]),
  );
};

// Run by itself, it writes them: node test/offline/iconPictures.mjs
if (process.argv[1] === fileURLToPath(import.meta.url))
  for (const [name, bytes] of Object.entries(iconPictures())) writeFileSync(new URL(name, folder), bytes);
