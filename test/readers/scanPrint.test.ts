import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { correctPages } from '../../src/core/sheets/proof/correctPages';
import { correctionBy, profileFrom } from '../../src/core/sheets/proof/printerProfile';
import { proofLines } from '../../src/core/sheets/proof/proofLines';
import { provePrint } from '../../src/core/sheets/proof/provePrint';
import type { SheetDocument } from '../../src/core/sheets/types';
import { makePdf } from '../../src/exporters/pdf/makePdf';
import { FONTS } from '../exporters/pdf/handMadeSheet';
import { unwrap } from '../exporters/pdf/unwrap';
import { instrumentNamed, layTemplate } from '../readback/makeTemplate';
import { runReader } from './runReader';
import { temporaryFolder } from './temporaryFolder';

const script = fileURLToPath(new URL('scan_by_opencv.py', import.meta.url));
const DPI = 600;
/** Readings are typed as a calliper tells them, mm. */
const CALLIPER = 0.02;

/** What a printer does to a page, and how the sheet lay on the scanner; noise in greys of 256. */
const PRINTERS = [
  { paper: 'a4', stretchX: 1, stretchY: 1, skewDeg: 0, turnDeg: 0, noise: 0 },
  { paper: 'letter', stretchX: 1.0035, stretchY: 0.9972, skewDeg: 0, turnDeg: 0.2, noise: 8 },
  { paper: 'a4', stretchX: 0.9961, stretchY: 1.0018, skewDeg: 0.08, turnDeg: -0.35, noise: 12 },
  { paper: 'a4', stretchX: 1.0042, stretchY: 1.0031, skewDeg: -0.1, turnDeg: 0.5, noise: 8 },
] as const;

interface Read {
  readonly across: number;
  readonly along: number;
  readonly down: number;
  readonly up: number;
}

describe('a print that is scanned, read, corrected and scanned again', () => {
  const { fileNamed } = temporaryFolder();
  const residuals: number[] = [];
  afterAll(() => console.info(`scanned prints: ${Math.max(...residuals).toFixed(3)} mm in 150 at most once corrected`));

  const readScan = (document: SheetDocument, printer: (typeof PRINTERS)[number], seed: number): Read => {
    writeFileSync(fileNamed('print.pdf'), unwrap(makePdf(document, FONTS)).bytes);
    runReader('pdftoppm', ['-r', String(DPI), '-gray', '-singlefile', fileNamed('print.pdf'), fileNamed('print')]);
    const asked = { ...printer, picture: fileNamed('print.pgm'), scan: fileNamed('scan.png'), dpi: DPI, seed };
    return JSON.parse(execFileSync('/usr/bin/python3', [script], { input: JSON.stringify(asked), encoding: 'utf8' }));
  };

  const typed = (mm: number): number => Math.round(mm / CALLIPER) * CALLIPER;

  it.each(PRINTERS)('$paper: × $stretchX and $stretchY, $skewDeg° out of square', (printer) => {
    const { paper, ...truth } = printer;
    const template = unwrap(layTemplate(instrumentNamed('steel'), paper, 'mm'));
    const [page] = template.pages;
    if (page === undefined) throw new Error('expected a page');
    const lines = proofLines(page, 'mm');
    const prove = ({ across, along, down, up }: Read) =>
      unwrap(
        provePrint({
          lines,
          across: typed(across),
          along: typed(along),
          diagonals: { down: typed(down), up: typed(up) },
          sigma: 0.02,
          part: null,
        }),
      );

    const found = prove(readScan(template, printer, 1));
    expect(Math.abs(found.factorX * truth.stretchX - 1)).toBeLessThan(0.0003);
    expect(Math.abs(found.factorY * truth.stretchY - 1)).toBeLessThan(0.0003);
    expect(Math.abs(found.skewDeg - truth.skewDeg)).toBeLessThan(0.03);
    expect(found.verdict).toBe(truth.stretchX === 1 ? 'true' : 'correct');

    const about = { id: 'p', printer: 'simulated', paper, date: '2026-11-25' };
    const profile = unwrap(profileFrom(found, page, null, about));
    const again = prove(readScan(unwrap(correctPages(template, correctionBy(profile, page))), printer, 2));
    expect(again.verdict).toBe('true');
    for (const factor of [again.factorX, again.factorY]) {
      residuals.push(Math.abs(1 / factor - 1) * 150);
      expect(Math.abs(1 / factor - 1) * 150).toBeLessThan(0.05);
    }
  });
});
