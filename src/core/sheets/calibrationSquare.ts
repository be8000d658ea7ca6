import type { Item } from '../drawing/types';
import { rectanglePath } from '../geom/rectanglePath';
import type { Point } from '../geom/types';
import { formatLength, type LengthStyle } from '../units/formatLength';
import { sheetLine, sheetPath, sheetText } from './sheetItems';

const SIDE = { mm: 100, in: 101.6 } as const;

/** Side of the calibration square, mm: 100 mm, or 4 in when working in inches. */
export const squareSide = (unit: LengthStyle['unit']): number => SIDE[unit];

const ticks = (at: Point, side: number, unit: LengthStyle['unit']): readonly Item[] => {
  const parts = unit === 'mm' ? 10 : 8;
  return Array.from({ length: parts - 1 }, (_, index) => index + 1).flatMap((index) => {
    const along = (side * index) / parts;
    const long = index * 2 === parts ? 3 : 1.8;
    const far = { x: at.x + side, y: at.y + side };
    return [
      sheetLine(`square-tick-top-${index}`, 'cross', { x: at.x + along, y: at.y }, { x: at.x + along, y: at.y + long }),
      sheetLine(
        `square-tick-foot-${index}`,
        'cross',
        { x: at.x + along, y: far.y },
        { x: at.x + along, y: far.y - long },
      ),
      sheetLine(
        `square-tick-left-${index}`,
        'cross',
        { x: at.x, y: at.y + along },
        { x: at.x + long, y: at.y + along },
      ),
      sheetLine(
        `square-tick-right-${index}`,
        'cross',
        { x: far.x, y: at.y + along },
        { x: far.x - long, y: at.y + along },
      ),
    ];
  });
};

/** The square that a print proves its scale with: sides and both diagonals, with blanks for the readings. at: top left corner. */
export const calibrationSquare = (at: Point, unit: LengthStyle['unit']): readonly Item[] => {
  const side = squareSide(unit);
  const middle = at.x + side / 2;
  const shown = unit === 'mm' ? '100.0 × 100.0 mm' : '4 × 4 in';
  const diagonal =
    unit === 'mm'
      ? `${formatLength(side * Math.SQRT2, { unit: 'mm', decimals: 1 })} mm`
      : `${formatLength(side * Math.SQRT2, { unit: 'in', denominator: 32 })} in`;
  const corner = (x: number, y: number, dx: number, dy: number): Item =>
    sheetLine(`square-corner-${dx}-${dy}`, 'cross', { x, y }, { x: x + dx, y: y + dy });
  return [
    sheetPath('calibration-square', 'frame', rectanglePath(at.x, at.y, side, side)),
    ...ticks(at, side, unit),
    corner(at.x, at.y, 8, 8),
    corner(at.x + side, at.y, -8, 8),
    corner(at.x, at.y + side, 8, -8),
    corner(at.x + side, at.y + side, -8, -8),
    sheetText('square-size', 'key', { x: middle, y: at.y + 14 }, shown, 'middle'),
    sheetText(
      'square-diagonal',
      'label',
      { x: middle, y: at.y + 20.5 },
      `corner to corner ${diagonal}, both ways`,
      'middle',
    ),
    sheetText('square-sides-read', 'note', { x: middle, y: at.y + 29 }, 'across ________   along ________', 'middle'),
    sheetText('square-diagonals-read', 'note', { x: middle, y: at.y + 36 }, 'diagonals ________   ________', 'middle'),
  ];
};
