import { MM_PER_INCH } from '../../core/units/mmPerInch';
import type { FileSize } from '../types';

const FOOT = MM_PER_INCH * 12;
/** 1200/3937 m, in mm; exact by definition (Mendenhall order, 1893). */
const SURVEY_FOOT = 1_200_000 / 3937;

/** mm to a unit by $INSUNITS (Autodesk's DXF reference, header variables); astronomical ones are left out. */
const UNITS: Readonly<Record<number, readonly [mm: number, words: string]>> = {
  1: [MM_PER_INCH, 'inches'],
  2: [FOOT, 'feet'],
  3: [FOOT * 5280, 'miles'],
  4: [1, 'millimetres'],
  5: [10, 'centimetres'],
  6: [1000, 'metres'],
  7: [1e6, 'kilometres'],
  8: [MM_PER_INCH / 1e6, 'millionths of an inch'],
  9: [MM_PER_INCH / 1000, 'thousandths of an inch'],
  10: [FOOT * 3, 'yards'],
  11: [1e-7, 'ångströms'],
  12: [1e-6, 'nanometres'],
  13: [1e-3, 'microns'],
  14: [100, 'decimetres'],
  15: [1e4, 'decametres'],
  16: [1e5, 'hectometres'],
  21: [SURVEY_FOOT, 'US survey feet'],
  22: [SURVEY_FOOT / 12, 'US survey inches'],
  23: [SURVEY_FOOT * 3, 'US survey yards'],
  24: [SURVEY_FOOT * 5280, 'US survey miles'],
};

/**
 * The unit of a DXF: by $INSUNITS alone. $MEASUREMENT only chooses hatch patterns and line types, and often says inches in
 * a metric drawing.
 */
export const dxfSize = (header: ReadonlyMap<string, string>): FileSize => {
  const [perUnit, words] = UNITS[Number(header.get('$INSUNITS') ?? 0)] ?? [];
  if (perUnit === undefined) return { known: false, asks: 'unit', words: 'the file does not say its unit' };
  return { known: true, perUnit, words: `${words}, as the file says` };
};
