import { describe, expect, it } from 'vitest';
import { type PaperClaims, paperCautions } from '../../../src/core/sheets/paperCautions';
import type { PrinterProfile } from '../../../src/core/sheets/proof/printerProfile';
import type { Paper } from '../../../src/core/sheets/types';
import { INCH, MM } from './parts/partCase';

const A4: Paper = { id: 'a4', name: 'A4', width: 210, height: 297 };
const LETTER: Paper = { id: 'letter', name: 'Letter', width: 215.9, height: 279.4 };
const A3: Paper = { id: 'a3', name: 'A3', width: 297, height: 420 };
const SHOP: PrinterProfile = {
  id: 'p',
  printer: 'Copy shop',
  paper: 'letter',
  factorX: 1.01,
  factorY: 1.01,
  sigmaX: 0.001,
  sigmaY: 0.001,
  date: '2026-11-20',
};
const AGREED: PaperClaims = { paper: A4, loaded: null, profile: null, read: null };

/** What is said of one claim that does not agree. */
const saidOf = (claims: Partial<PaperClaims>, style = MM): string => {
  const cautions = paperCautions({ ...AGREED, ...claims }, style);
  expect(cautions).toHaveLength(1);
  return cautions[0]?.message ?? '';
};

describe('paperCautions', () => {
  it('says nothing while all speak of one paper, or of two of one size', () => {
    const same: PaperClaims = { paper: A4, loaded: A4, profile: { of: { ...SHOP, paper: 'a4' }, on: A4 }, read: A4 };
    expect(paperCautions(AGREED, MM)).toEqual([]);
    expect(paperCautions(same, MM)).toEqual([]);
    expect(paperCautions({ ...AGREED, loaded: { ...A4, id: 'own-1', name: 'Card' } }, MM)).toEqual([]);
  });

  // A4 page fitted to Letter 0.940741, Letter page fitted to A4 0.972674: computed from the papers' sides, 279.4/297 and
  // 210/215.9. Lost at 100 %: 297 − 279.4 = 17.6; 215.9 − 210 = 5.9.
  it('tells what becomes of A4 pages on Letter, before github.com/mozilla/pdf.js/pull/7677 happens', () => {
    const said = saidOf({ loaded: LETTER });
    expect(said).toContain('Letter is in the printer, but these pages are laid for A4.');
    expect(said).toContain('Fitted, they would print at 94.1 %; at 100 %, 17.6 mm of their length would be missing.');
    expect(said).toContain('Lay them for Letter, or put A4 in the printer.');
  });

  it('tells what becomes of Letter pages on A4, in inches, and of pages on a larger paper', () => {
    expect(saidOf({ paper: LETTER, loaded: A4 }, INCH)).toContain(
      'Fitted, they would print at 97.3 %; at 100 %, 15/64″ of their width would be missing.',
    );
    // 297/210 = 1.4143 and 420/297 = 1.4141.
    expect(saidOf({ loaded: A3 })).toContain('Fitted, they would print at 141.4 %; at 100 %, they keep their size.');
  });

  it('tells of factors that were read on another paper, and of readings of another print', () => {
    expect(saidOf({ profile: { of: SHOP, on: LETTER } })).toMatch(
      /^The factors of Copy shop, 2026-11-20, were read on Letter: these pages for A4 carry no correction\./,
    );
    expect(saidOf({ read: LETTER })).toMatch(/of a print on Letter.*they say nothing of A4\. Clear them/);
  });
});
