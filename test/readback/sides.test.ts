import { expect, it } from 'vitest';
import { readWithPdfium } from '../readPdf/readWithPdfium';
import { EVERY_TEMPLATE } from './everyTemplate';
import { makeTemplate } from './makeTemplate';

/** The bass string of each instrument. */
const LAST = { steel: 'string 6', classical: 'string 6', ukulele: 'string 4' };

// Seen from the front with the nut up, the thickest string of a right-handed guitar lies to the left: common knowledge.
it.each(EVERY_TEMPLATE)('$instrument, $paper, $unit, $hand hand names its sides rightly', async (wanted) => {
  const [page] = await readWithPdfium(makeTemplate(wanted));
  const x = (word: string) => page?.texts.find(({ text }) => text.trim() === word)?.start.x ?? Number.NaN;
  const toTheRight = wanted.hand === 'right' ? 1 : -1;
  expect((x('TREBLE') - x('BASS')) * toTheRight).toBeGreaterThan(60);
  expect((x('string 1') - x(LAST[wanted.instrument])) * toTheRight).toBeGreaterThan(20);
});
