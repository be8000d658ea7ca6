import { rectanglePath } from '../../geom/rectanglePath';
import type { Point } from '../../geom/types';
import { roundDecimal } from '../../units/roundDecimal';
import type { Item } from '../types';
import { isBeyond } from './isBeyond';
import { plotLine, plotPath, plotText } from './plotItems';
import { signedCents } from './signedCents';

/** Paper between a full bar and the edge of its square, and to the sides of a bar, mm. */
const ABOVE_BAR = 0.6;
const BESIDE_BAR = 1.6;

/** One square of the grid: its frame, its middle line, a bar up for sharp or down for flat, the figure opposite the bar. */
export const centsCell = (
  id: string,
  part: string,
  { x, y }: Point,
  size: number,
  cents: number,
  limit: number,
): readonly Item[] => {
  const middle = y + size / 2;
  const shown = roundDecimal(cents, 1);
  const beyond = isBeyond(cents, limit);
  const bar = Math.min(1, Math.abs(cents) / limit) * (size / 2 - ABOVE_BAR);
  const up = shown >= 0;
  return [
    plotPath(id, part, 'plot-axis', rectanglePath(x, y, size, size)),
    plotLine(
      `${id}-middle`,
      part,
      'plot-axis',
      { x: x + BESIDE_BAR, y: middle },
      { x: x + size - BESIDE_BAR, y: middle },
    ),
    ...(shown === 0
      ? []
      : [
          plotPath(
            `${id}-bar`,
            part,
            beyond ? 'plot-mark' : 'plot-bar',
            rectanglePath(x + BESIDE_BAR, up ? middle - bar : middle, size - 2 * BESIDE_BAR, bar),
          ),
        ]),
    plotText(
      `${id}-figure`,
      part,
      beyond ? 'heading' : 'note',
      { x: x + size / 2, y: middle + ((up ? 1 : -1) * size) / 4 },
      signedCents(cents),
      'middle',
    ),
  ];
};
