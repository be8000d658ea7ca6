import { beforeAll, describe, expect, it } from 'vitest';
import { readWithPdfjs } from '../readPdf/readWithPdfjs';
import { cutPage, isSquare, type Parts } from './cutPage';
import { circlesOf } from './deviations';
import { EVERY_TEMPLATE } from './everyTemplate';
import { makeTemplate } from './makeTemplate';

/** Words of the drawing, and of what is cut away. */
const TAPED = ['TREBLE', 'BASS', 'NUT SIDE', 'SQUARE LINE', 'octave line', 'board edge', 'string 1', 'THIS SIDE UP'];
const CUT_AWAY = ['Place by these', 'Before the glue', 'measured from', 'Long lines', 'Blades', 'cut on the dots'];

describe.each(EVERY_TEMPLATE)('$instrument, $paper, $unit, $hand hand', (wanted) => {
  const side = wanted.unit === 'mm' ? 100 : 101.6;
  let parts: Parts;
  let squares: number;
  beforeAll(async () => {
    const { pages } = await readWithPdfjs(makeTemplate(wanted));
    parts = cutPage(pages[0]);
    squares = pages.flatMap(({ paths }) => paths.filter((path) => isSquare(path, side))).length;
  });

  it('has nothing across a cut', () => {
    expect(parts.across).toEqual([]);
  });

  it('has the words of the drawing on the taped part, those of the tables on what is cut away', () => {
    const [taped, cut] = [parts.taped, parts.cutAway].map(({ words }) => words.join('\n'));
    for (const word of TAPED) expect(taped).toContain(word);
    for (const word of CUT_AWAY) expect(cut).toContain(word);
    for (const word of TAPED) expect(cut).not.toContain(word);
    for (const word of CUT_AWAY) expect(taped).not.toContain(word);
  });

  it('cuts no hole and no dashed line away, and tapes no calibration square', () => {
    expect(circlesOf(parts.cutAway.paths)).toEqual([]);
    expect(parts.cutAway.paths.filter(({ dash }) => dash.length > 0)).toEqual([]);
    expect(parts.taped.paths.filter((path) => isSquare(path, side))).toEqual([]);
    expect(squares).toBe(1);
  });
});
