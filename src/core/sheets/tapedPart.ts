import type { Derived } from '../derive/types';
import type { Project } from '../document/types';
import { buildDrawing } from '../drawing/buildDrawing';
import { drawingBox } from '../drawing/drawingBox';
import { moveItem } from '../drawing/moveItem';
import type { Item } from '../drawing/types';
import type { LengthStyle } from '../units/formatLength';
import { showLength } from '../units/showLength';
import type { Frame } from './frame';
import { sheetLine, sheetText } from './sheetItems';

const PITCH = 4.4;
const NOTES = [
  'THIS SIDE UP. Set the sheet by rule and small square, tape it.',
  'Cut the grey windows on the bench, never on the instrument:',
  'carry the corners to tape beneath, then lift the sheet.',
  'Drill through the bridge itself, braces found first.',
];
/** Room for the notes under the bridge, mm. */
const NOTES_HEIGHT = NOTES.length * PITCH + 2;

/** The part of the sheet that is taped to the instrument. */
export interface TapedPart {
  readonly width: number;
  readonly height: number;
  /** Its items when its top middle lies there on the page. */
  readonly at: (x: number, y: number) => readonly Item[];
}

const holeWords = (project: Project, style: LengthStyle): readonly string[] => {
  const { locating, pins } = project.bridge;
  const site = locating.site === 'slot-ends' ? 'the slot ends' : 'the outer pin holes';
  return [
    `2 locating-pin holes ${showLength(locating.drill, style)} in ${site}`,
    ...(pins === null
      ? []
      : [`${project.strings.length} pins, pilot ${showLength(pins.hole, style)}, ream to the pin`]),
  ];
};

/** The drawing at true size with its notes, ready to be laid on a page; null when the bridge could not be computed. */
export const tapedPart = (project: Project, derived: Derived, style: LengthStyle): TapedPart | null => {
  const box = drawingBox(derived, style.unit);
  if (box === null) return null;
  const { top, bottom, half } = box;
  const { hand, nut } = project.instrument;
  const items = buildDrawing(derived, { hand, datum: nut.datum, style });
  const notesTop = bottom - top + 2;
  const notes = (x: number, y: number): readonly Item[] => [
    ...NOTES.map((text, index) =>
      sheetText(`note-${index}`, 'note', { x: x - half, y: y + notesTop + index * PITCH }, text),
    ),
    ...holeWords(project, style).map((text, index) =>
      sheetText(`holes-${index}`, 'note', { x: x + half, y: y + notesTop + index * PITCH }, text, 'end'),
    ),
  ];
  return {
    width: 2 * half,
    height: notesTop + NOTES_HEIGHT,
    at: (x, y) => [...items.map((item) => moveItem(item, { x, y: y - top })), ...notes(x, y)],
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
