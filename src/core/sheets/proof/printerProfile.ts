import { fail, ok, type Result } from '../../result';
import type { Page } from '../types';
import { PLAUSIBLE } from './plausible';
import type { PrintCorrection, PrintFactor } from './types';

/** What one printer does to one paper, found by reading a print. Axes: the paper as it lies upright. */
export interface PrinterProfile {
  readonly id: string;
  /** As the maker calls it. */
  readonly printer: string;
  /** Id of the paper. */
  readonly paper: string;
  /** Multiply a drawing by these to print true. */
  readonly factorX: number;
  readonly factorY: number;
  readonly sigmaX: number;
  readonly sigmaY: number;
  /** ISO date of the reading. */
  readonly date: string;
  /** Only where it was kept for a setting that the maker cannot change and a reprint was advised. */
  readonly againstAdvice?: true;
}

type Size = Pick<Page, 'width' | 'height'>;

/** A page on its side goes through the printer upright: its across is the paper's along. */
const onItsSide = ({ width, height }: Size): boolean => width > height;

const turned = <Value>(page: Size, x: Value, y: Value): { readonly x: Value; readonly y: Value } =>
  onItsSide(page) ? { x: y, y: x } : { x, y };

/** The correction that a page carries by a profile, along the axes of the page. */
export const correctionBy = (profile: PrinterProfile, page: Size): PrintCorrection => {
  const { x, y } = turned(page, profile.factorX, profile.factorY);
  const against = profile.againstAdvice === true ? ({ againstAdvice: true } as const) : {};
  return { factorX: x, factorY: y, name: profile.printer, date: profile.date, ...against };
};

/**
 * What a reading says of the printer. carried: the correction that the print in hand was made with, so that what was read is
 * what it left. Code: print.factor (outside 90 to 110 %).
 */
export const profileFrom = (
  { factorX, factorY, sigmaX, sigmaY }: PrintFactor,
  page: Size,
  carried: PrintCorrection | null,
  about: Pick<PrinterProfile, 'id' | 'printer' | 'paper' | 'date' | 'againstAdvice'>,
): Result<PrinterProfile> => {
  const [byX, byY] = [carried?.factorX ?? 1, carried?.factorY ?? 1];
  const factor = turned(page, factorX * byX, factorY * byY);
  const sigma = turned(page, sigmaX * byX, sigmaY * byY);
  if ([factor.x, factor.y].some((each) => !(each >= PLAUSIBLE.least && each <= PLAUSIBLE.most)))
    return fail('print', 'print.factor', 'Expected factors from 0.9 to 1.1: set the print dialog right instead.');
  return ok({ ...about, factorX: factor.x, factorY: factor.y, sigmaX: sigma.x, sigmaY: sigma.y });
};
