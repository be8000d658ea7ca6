import type { SaddlePlace, SlotPlace } from '../../../bridge/types';
import { polyline } from '../../../drawing/polyline';
import type { Item } from '../../../drawing/types';
import { pathBounds } from '../../../geom/pathBounds';
import { rectanglePath } from '../../../geom/rectanglePath';
import { sheetPath, sheetText } from '../../sheetItems';
import type { GaugeNumber } from './gaugeNumbers';

const BESIDE = 7;
const AHEAD = 14;
const BEHIND = 9;
/** Half the length of a witness line, mm. */
const WITNESS = 3;
const LETTER = { treble: 'T', centre: 'C', bass: 'B' } as const;

/** Where the slot's front wall and its break points lie, as lines that a rule is read to; a letter at each place. */
const witnesses = ({ id, x, slotFront, breakPoint }: GaugeNumber): readonly Item[] => [
  sheetPath(`front-${id}`, 'rule-line', polyline({ x: x - WITNESS, y: slotFront }, { x: x + WITNESS, y: slotFront })),
  sheetPath(`break-${id}`, 'rule-line', polyline({ x: x - WITNESS, y: breakPoint }, { x: x + WITNESS, y: breakPoint })),
  sheetText(`letter-${id}`, 'heading', { x, y: slotFront - 3.4 }, LETTER[id], 'middle'),
];

/** Half the width of a piece that carries the key, mm. */
export const keyPieceHalf = ({ outline }: SlotPlace): number => {
  const { minX, maxX } = pathBounds(outline);
  return Math.max(maxX, -minX) + BESIDE;
};

/**
 * The end of the gauge with the key for the saddle slot, seen from above, right hand, y from the nut datum. figure: of the
 * square line. piece: where it begins and half its width, where they are not the usual ones.
 */
export const saddleKeyEnd = (
  slot: SlotPlace,
  saddle: SaddlePlace,
  numbers: readonly GaugeNumber[],
  squareLine: number,
  figure: string,
  { front, half } = { front: squareLine - AHEAD, half: keyPieceHalf(slot) },
): readonly Item[] => {
  const { maxY } = pathBounds(slot.outline);
  const { treble, bass } = slot.ends;
  const breakAt = (x: number) => ({ x, y: saddle.centre + saddle.slope * x });
  return [
    sheetPath('piece', 'outline', rectanglePath(-half, front, 2 * half, maxY + BEHIND - front)),
    sheetPath('square-line', 'square-line', polyline({ x: -half, y: squareLine }, { x: half, y: squareLine })),
    sheetPath('centreline', 'centreline', polyline({ x: 0, y: slot.back + 1 }, { x: 0, y: maxY + BEHIND })),
    sheetPath('key', 'slot', slot.outline),
    sheetPath('break-line', 'centreline', polyline(breakAt(bass.x), breakAt(treble.x))),
    ...numbers.flatMap(witnesses),
    sheetText('treble', 'heading', { x: half - 2, y: squareLine + 5 }, 'TREBLE', 'end'),
    sheetText('bass', 'heading', { x: 2 - half, y: squareLine + 5 }, 'BASS', 'start'),
    sheetText('name', 'heading', { x: 0, y: squareLine - 10 }, '↑ NUT SIDE · SADDLE-KEY END', 'middle'),
    sheetText('square-figure', 'key', { x: 0, y: squareLine - 4 }, figure, 'middle'),
  ];
};
