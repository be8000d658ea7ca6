import { execFileSync } from 'node:child_process';

/** Runs one of Debian's readers and answers what it wrote. Bytes above 127 as latin1 where `encoding` says so. */
export const runReader = (
  program: 'qpdf' | 'pdfinfo' | 'pdffonts' | 'pdftotext' | 'pdftocairo' | 'pdftoppm' | 'rsvg-convert',
  options: readonly string[],
  encoding: 'utf8' | 'latin1' = 'utf8',
): string => execFileSync(program, options, { encoding, maxBuffer: 64e6 });
