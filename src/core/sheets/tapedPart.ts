import type { Derived } from '../derive/types';
import type { Project } from '../document/types';
import { buildDrawing } from '../drawing/buildDrawing';
import { drawingBox } from '../drawing/drawingBox';
import { drawHeld } from '../drawing/marks/drawHeld';
import { moveItem } from '../drawing/moveItem';
import { TEXT_HEIGHT } from '../drawing/textHeights';
import type { Item } from '../drawing/types';
import { measureText } from '../text/measureText';
import type { LengthStyle } from '../units/formatLength';
import { showLength } from '../units/showLength';
import type { Frame } from './frame';
import { sheetLine, sheetText } from './sheetItems';
import { bodyReach, trimLines } from './trimLines';

const PITCH = 4.4;
const NOTES = [
  'THIS SIDE UP. Set the sheet by rule and small square, tape it.',
  'Cut the grey windows on the bench, never on the instrument:',
  'carry the corners to tape beneath, then lift the sheet.',
  'Drill through the bridge itself, braces found first.',
];
/** White between the two columns of notes, mm. */
const COLUMN_GAP = 3;

/** The part of the sheet that is taped to the instrument. */
export interface TapedPart {
  readonly width: number;
  readonly height: number;
  /** Its items in the middle of the top of the frame. */
  readonly on: (frame: Frame) => readonly Item[];
}

const holeWords = (project: Project, style: LengthStyle): readonly string[] => {
  const { locating, pins, ties } = project.bridge;
  const site = locating.site === 'slot-ends' ? 'the slot ends' : 'the outer pin holes';
  return [
    `2 locating-pin holes ${showLength(locating.drill, style)} in ${site}`,
    ...(pins === null
      ? []
      : [`${project.strings.length} pins, pilot ${showLength(pins.hole, style)}, ream to the pin`]),
    ...(ties === null
      ? []
      : [
          `${project.strings.length} string holes ${showLength(ties.hole, style)} ${ties.kind === 'back-edge' ? 'to the back edge' : 'through the tie block'}`,
        ]),
  ];
};

/** The words under the bridge, y from their top: in two columns, or one where the body leaves no room for two. */
const notesWithin = (
  half: number,
  holes: readonly string[],
): { readonly items: readonly Item[]; readonly height: number } => {
  const widest = (lines: readonly string[]): number =>
    Math.max(...lines.map((text) => measureText(text, TEXT_HEIGHT.note, 'regular')));
  const beside = widest(NOTES) + widest(holes) + COLUMN_GAP <= 2 * half;
  const hole = (text: string, index: number): Item =>
    beside
      ? sheetText(`holes-${index}`, 'note', { x: half, y: index * PITCH }, text, 'end')
      : sheetText(`holes-${index}`, 'note', { x: 0 - half, y: (NOTES.length + index) * PITCH }, text);
  return {
    items: [
      ...NOTES.map((text, index) => sheetText(`note-${index}`, 'note', { x: 0 - half, y: index * PITCH }, text)),
      ...holes.map(hole),
    ],
    height: (beside ? NOTES.length : NOTES.length + holes.length) * PITCH + 2,
  };
};

/** The drawing at true size with its notes, ready to be laid on a page; null when the bridge could not be computed. */
export const tapedPart = (project: Project, derived: Derived, style: LengthStyle): TapedPart | null => {
  const box = drawingBox(derived, style.unit);
  if (box === null || !derived.placement.ok) return null;
  const { top, bottom, half } = box;
  const { hand, nut } = project.instrument;
  const reach = bodyReach(project, derived);
  const line = derived.placement.value.squareLine[style.unit].fromNut;
  const notes = notesWithin(Math.min(half, reach), holeWords(project, style));
  const notesTop = bottom + 2;
  const height = notesTop - top + notes.height;
  const items = [
    ...buildDrawing(derived, { hand, datum: nut.datum, style, reach }),
    ...drawHeld(project, derived, hand),
    ...notes.items.map((item) => moveItem(item, { x: 0, y: notesTop })),
  ];
  return {
    width: 2 * half,
    height,
    on: (frame) => {
      const middle = (frame.left + frame.right) / 2;
      const sheet = { minX: frame.left - 1 - middle, maxX: frame.right - middle, minY: top, maxY: top + height };
      const by = { x: middle, y: frame.top - top };
      return [...items, ...trimLines(project, derived, sheet, line)].map((item) => moveItem(item, by));
    },
  };
};

/** Dotted lines along which the taped part is cut from the rest, and when. y: below the taped part. */
export const scissorsLines = (frame: Frame, y: number): readonly Item[] => [
  sheetLine('scissors-left', 'scissors', { x: frame.left - 1, y: frame.margin }, { x: frame.left - 1, y }),
  sheetLine('scissors-foot', 'scissors', { x: frame.left - 1, y }, { x: frame.right, y }),
  sheetText(
    'scissors-note',
    'note',
    { x: frame.right, y: y + 2.2 },
    'read the square and the long lines first, then cut on the dots, on the bench',
    'end',
  ),
];
