import { heightLimitsInUse } from '../../../height/limitsInUse';
import { formatLength } from '../../../units/formatLength';
import { showLength } from '../../../units/showLength';
import { squareSide } from '../../calibrationSquare';
import { PAPER_TRUTH_IN_SHORT } from '../../proof/paperTruth';
import type { SheetContext } from '../types';
import { blanks, note, type RowsByStep, readings } from './worksheetRows';

/** Before any paper is trusted: neck, braces, sole, print. */
export const readyRows = ({ project, style }: SheetContext): RowsByStep => {
  const { height, limits, body } = project;
  const { airspace } = heightLimitsInUse(height.kind, limits);
  const side = squareSide(style.unit);
  const square = showLength(side, style);
  const corner = showLength(side * Math.SQRT2, style);
  const counted = (what: string, count: number | null): string =>
    count === null ? `${what} found` : `${what} found, of ${count}`;
  return {
    neck: [
      readings('Straightedge over the bridge', {
        name: '',
        expected: `${formatLength(airspace.least, style)} to ${showLength(airspace.most, style)}`,
      }),
    ],
    braces: [
      blanks(counted('braces', body === null ? null : body.braces.length), 'plate thick', 'brace nearest to a hole'),
    ],
    sole: [blanks('gap at the treble wing', 'centre', 'bass wing')],
    print: [
      readings('Square, side to side', { name: 'across', expected: square }, { name: 'along', expected: square }),
      readings('Square, corner to corner', { name: 'one way', expected: corner }, { name: 'other', expected: corner }),
      blanks('printer and paper', 'correction on the sheet'),
      ...PAPER_TRUTH_IN_SHORT.map(note),
    ],
  };
};
