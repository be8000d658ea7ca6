import type { Derived } from '../derive/types';
import type { Project } from '../document/types';
import { TEXT_HEIGHT } from '../drawing/textHeights';
import type { Item } from '../drawing/types';
import { pathBounds } from '../geom/pathBounds';
import type { Bounds } from '../geom/types';
import { measureText } from '../text/measureText';
import { sheetLine, sheetText } from './sheetItems';

/** From a line to the middle of the words beside it, mm. */
const BESIDE = 2.4;
/** From the edge of the body to the nearest words of the sheet, mm. */
const CLEAR = 2;
const QUARTER_TURN = Math.PI / 2;
const SIDE_WORDS = 'body edge: trim';
const TAIL_WORDS = 'tail end of the body: trim';

/** Where the top of the body ends around the bridge, as it is seen: y from the nut datum; null: not measured. */
interface BodyEnds {
  readonly left: number;
  readonly right: number;
  readonly tail: number | null;
}

const bodyEnds = ({ body, instrument: { hand, seamOffset } }: Project, { bridge }: Derived): BodyEnds | null => {
  if (body === null || body.across === null || !bridge.ok) return null;
  const seam = hand === 'left' ? 0 - seamOffset : seamOffset;
  const tail = body.tail === null ? null : bridge.value.front + body.tail;
  return { left: seam - body.across / 2, right: seam + body.across / 2, tail };
};

/** How far from the centreline the words of the taped sheet may reach before they hang over the body; no limit where it was not measured. */
export const bodyReach = (project: Project, derived: Derived): number => {
  const ends = bodyEnds(project, derived);
  return ends === null ? Number.POSITIVE_INFINITY : Math.min(0 - ends.left, ends.right) - CLEAR;
};

/**
 * Dotted lines where the taped sheet ends with the body, so that it lies flat and takes tape; each only where it lies within
 * the printed sheet. sheet: instrument frame, as it is seen. squareLine: its y.
 */
export const trimLines = (project: Project, derived: Derived, sheet: Bounds, squareLine: number): readonly Item[] => {
  const ends = bodyEnds(project, derived);
  if (ends === null || !derived.bridge.ok) return [];
  const back = pathBounds(derived.bridge.value.footprint.outline).maxY;
  const foot = ends.tail !== null && ends.tail > back && ends.tail < sheet.maxY ? ends.tail : null;
  const bottom = foot ?? sheet.maxY;
  const words = measureText(SIDE_WORDS, TEXT_HEIGHT.note, 'regular');
  const side = (id: string, x: number, inward: number): readonly Item[] =>
    x <= sheet.minX || x >= sheet.maxX
      ? []
      : [
          sheetLine(`trim-${id}`, 'scissors', { x, y: sheet.minY }, { x, y: bottom }),
          sheetText(
            `trim-${id}-name`,
            'note',
            { x: x + inward * BESIDE, y: squareLine + 3 + words / 2 },
            SIDE_WORDS,
            'middle',
            QUARTER_TURN,
          ),
        ];
  const [from, to] = [Math.max(ends.left, sheet.minX), Math.min(ends.right, sheet.maxX)];
  return [
    ...side('left', ends.left, 1),
    ...side('right', ends.right, -1),
    ...(foot === null
      ? []
      : [
          sheetLine('trim-tail', 'scissors', { x: from, y: foot }, { x: to, y: foot }),
          ...(foot + 5 < sheet.maxY
            ? [sheetText('trim-tail-name', 'note', { x: 0, y: foot + BESIDE }, TAIL_WORDS, 'middle')]
            : []),
        ]),
  ];
};
