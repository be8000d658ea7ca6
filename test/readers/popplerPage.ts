import type { LinesOfPage } from '../readback/deviations';
import { readPopplerSvg } from './readPopplerSvg';
import { runReader } from './runReader';

/** The lines of a page as pdftocairo draws them, neither shrunk nor moved; number from 1. */
export const popplerPage = (file: string, number: number): LinesOfPage => {
  const one = ['-f', String(number), '-l', String(number)];
  const asIs = ['-noshrink', '-nocenter', '-paperw', '1000', '-paperh', '1000'];
  return readPopplerSvg(runReader('pdftocairo', ['-svg', ...asIs, ...one, file, '-']));
};
