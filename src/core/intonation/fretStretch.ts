import type { FretGrid } from './fretGrid';
import type { OpenLine } from './openLine';
import { lengthBehind, straight } from './stringLengths';
import type { Setup } from './types';

/** A finger stays at least a fifth of the gap away from the fret before: a fingertip has its own width (no source). */
const FURTHEST_FINGER = 0.8;

/** Sounding length from the top of the grid's fret number `i` to the saddle, mm. */
export const frontLength = (setup: Setup, grid: FretGrid, i: number, line: OpenLine, saddle: number): number =>
  straight(
    setup.scaleLength + saddle - (grid.distance[i] as number),
    line.saddleHeight + setup.relief * (grid.dip[i] as number),
  );

/** Relative stretch of the whole string when the grid's fret number `i` is pressed: Q = (L + L' − L0)/L0. */
export function fretStretch(
  setup: Setup,
  grid: FretGrid,
  i: number,
  line: OpenLine,
  saddle: number,
  nut: number,
): number {
  const { relief, scaleLength, nutHeight, fingerDistance } = setup;
  const x = grid.distance[i] as number;
  const gap = grid.gap[i] as number;
  const fretTop = -relief * (grid.dip[i] as number);
  const step = -relief * (grid.dipBefore[i] as number) - fretTop;
  const along = scaleLength + saddle - x;
  const up = line.saddleHeight - fretTop;
  const finger = Math.min(fingerDistance, FURTHEST_FINGER * gap);
  const behind = lengthBehind(x + nut, nutHeight - fretTop, up / along, finger, setup.pushDown ?? 0, gap, step);
  return (straight(along, up) + behind - line.openLength) / line.openLength;
}
