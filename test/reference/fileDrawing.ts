import type { Item } from '../../src/core/drawing/types';
import type { Path, Point } from '../../src/core/geom/types';

// A bridge made up by hand for the files of other programs; right hand, instrument frame, mm, y down.

const at = (x: number, y: number): Point => ({ x, y });

/** Lines, arcs and two curves: 70 across, 28 along, quarter-round corners of 5, a swelling of 8 at the back. */
export const OUTLINE: Path = {
  start: at(-30, 500),
  segments: [
    { kind: 'line', to: at(30, 500) },
    { kind: 'arc', to: at(35, 505), centre: at(30, 505), clockwise: true },
    { kind: 'line', to: at(35, 515) },
    { kind: 'arc', to: at(30, 520), centre: at(30, 515), clockwise: true },
    { kind: 'cubic', c1: at(20, 520), c2: at(12, 528), to: at(0, 528) },
    { kind: 'cubic', c1: at(-12, 528), c2: at(-20, 520), to: at(-30, 520) },
    { kind: 'arc', to: at(-35, 515), centre: at(-30, 515), clockwise: true },
    { kind: 'line', to: at(-35, 505) },
    { kind: 'arc', to: at(-30, 500), centre: at(-30, 505), clockwise: true },
  ],
  closed: true,
};

/**
 * Its area, mm². Without the swelling a rectangle less what rounding takes: 70·20 − (4 − π)·5². Of the swelling, each half is
 * ∫y dx with y = 24t² − 16t³ and x = 30 − 30t + 6t² − 6t³ over the line y = 520: 240 − 72 + 86.4 − 120 + 38.4 − 48 = 124.8.
 */
export const OUTLINE_AREA = 1400 - (4 - Math.PI) * 25 + 2 * 124.8;

/** A slot with half-round ends, 3 wide, 2 off the centreline toward the treble side. */
const SLOT: Path = {
  start: at(-18, 505),
  segments: [
    { kind: 'line', to: at(22, 505) },
    { kind: 'arc', to: at(22, 508), centre: at(22, 506.5), clockwise: true },
    { kind: 'line', to: at(-18, 508) },
    { kind: 'arc', to: at(-18, 505), centre: at(-18, 506.5), clockwise: true },
  ],
  closed: true,
};

/** A pin hole of 5 at x 12, y 514, as two half circles. */
const HOLE: Path = {
  start: at(14.5, 514),
  segments: [
    { kind: 'arc', to: at(9.5, 514), centre: at(12, 514), clockwise: true },
    { kind: 'arc', to: at(14.5, 514), centre: at(12, 514), clockwise: true },
  ],
  closed: true,
};

const CENTRELINE: Path = { start: at(0, 490), segments: [{ kind: 'line', to: at(0, 540) }], closed: false };
const WINDOW: Path = {
  start: at(40, 500),
  segments: [
    { kind: 'line', to: at(50, 500) },
    { kind: 'line', to: at(50, 510) },
    { kind: 'line', to: at(40, 510) },
  ],
  closed: true,
};

const path = (id: string, part: string, role: Item['role'], layer: Item['layer'], line: Path): Item => ({
  kind: 'path',
  id,
  part,
  role,
  layer,
  path: line,
});

export const ITEMS: readonly Item[] = [
  path('window', 'window', 'window', 'windows', WINDOW),
  path('footprint', 'footprint', 'outline', 'bridge', OUTLINE),
  path('slot', 'slot', 'slot', 'slot', SLOT),
  path('slot-centreline', 'slot', 'centreline', 'slot', CENTRELINE),
  path('pin-1', 'pin 1', 'hole', 'pins', HOLE),
  {
    kind: 'text',
    id: 'side',
    part: 'footprint',
    role: 'heading',
    layer: 'text',
    at: at(35, 495),
    text: 'TREBLE',
    height: 3.2,
    anchor: 'middle',
    angle: 0,
  },
  {
    kind: 'text',
    id: 'note',
    part: 'board',
    role: 'note',
    layer: 'board',
    at: at(-45, 510),
    text: '⌀ 5 ± 0.1, <3/16″> & 90° 100%% ^ Ω',
    height: 2.9,
    anchor: 'start',
    angle: -Math.PI / 2,
  },
];
