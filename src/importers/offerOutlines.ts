import { pathBounds } from '../core/geom/pathBounds';
import type { Path } from '../core/geom/types';
import { validatePath } from '../core/geom/validatePath';
import type { DrawingScale, ImportedOutlines } from '../core/ports';
import { fail, ok, type Result } from '../core/result';
import { MM_PER_INCH } from '../core/units/mmPerInch';
import { OUTLINE_SIDE_MM } from './judgeOutline';
import { outlinesAt } from './outlinesAt';
import type { Drawing } from './types';

/** How long the longest path is drawn while the size is not known, mm: about a bridge's length. */
const SHOWN_MM = 150;

const UNIT_MM = { mm: 1, cm: 10, in: MM_PER_INCH } as const;
const UNIT_WORDS = { mm: 'millimetres', cm: 'centimetres', in: 'inches' } as const;

/** The scale that file and maker agree on; null while it is not known. */
const agreed = ({ size }: Drawing, scale: DrawingScale): { perUnit: number; words: string } | null => {
  if (size.known) return { perUnit: size.perUnit, words: size.words };
  if (scale.by === 'dpi' && size.asks === 'dpi')
    return { perUnit: MM_PER_INCH / scale.dpi, words: `${scale.dpi} pixels to an inch, as chosen` };
  if (scale.by === 'unit' && size.asks !== 'dpi')
    return { perUnit: UNIT_MM[scale.unit], words: `${UNIT_WORDS[scale.unit]}, as chosen` };
  return null;
};

const longestSide = (path: Path): number => {
  if (!validatePath(path).ok) return 0;
  const { minX, minY, maxX, maxY } = pathBounds(path);
  return Math.max(maxX - minX, maxY - minY);
};

/**
 * What a drawing offers at a scale. Codes: import.empty (no path in it), scale.longest (a known length outside of what an
 * outline may have).
 */
export const offerOutlines = (drawing: Drawing, scale: DrawingScale): Result<ImportedOutlines> => {
  const { kind, pieces, size, leftOut } = drawing;
  const seen = leftOut.length === 0 ? '' : ` It holds ${leftOut.join(', ')}, which cannot be an outline here.`;
  const nothing = fail<ImportedOutlines>(
    '',
    'import.empty',
    `Expected lines or curves in the file, found none.${seen}`,
  );
  const longest = pieces.reduce((most, piece) => Math.max(most, longestSide(piece)), 0);
  if (!(longest > 0)) return nothing;
  const shown = SHOWN_MM / longest;
  let known = agreed(drawing, scale);
  if (scale.by === 'length') {
    const { least, most } = OUTLINE_SIDE_MM;
    if (!(scale.longest >= least && scale.longest <= most))
      return fail('longest', 'scale.longest', `Expected a length of ${least} to ${most} mm, got ${scale.longest} mm.`);
    const [first] = outlinesAt(pieces, shown, false).outlines;
    if (first === undefined) return nothing;
    const perUnit = (shown * scale.longest) / Math.max(first.across, first.along);
    known = { perUnit, words: 'by the length given for the first outline' };
  }
  const perUnit = known?.perUnit ?? shown;
  const offered = outlinesAt(pieces, perUnit, known !== null);
  if (offered.outlines.length === 0) return nothing;
  const needs = known !== null || size.known ? null : size.asks;
  return ok({ kind, needs, units: known?.words ?? size.words, perUnit, ...offered, leftOut });
};
