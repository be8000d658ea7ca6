import type { Derived } from '../../derive/types';
import { drawBoard, drawOuterStrings } from '../../drawing/drawBoard';
import { type DrawingBox, drawingBox } from '../../drawing/drawingBox';
import { drawNutArrow, drawSides } from '../../drawing/drawSides';
import { drawSquareLine } from '../../drawing/drawSquareLine';
import { handedItem } from '../../drawing/handed';
import { polyline } from '../../drawing/polyline';
import { TEXT_HEIGHT } from '../../drawing/textHeights';
import type { Item } from '../../drawing/types';
import { circlePath } from '../../geom/circlePath';
import { pathBounds } from '../../geom/pathBounds';
import type { Path } from '../../geom/types';
import { failed, ok, type Result } from '../../result';
import { measureText } from '../../text/measureText';
import { showLength } from '../../units/showLength';
import { sheetPath, sheetText } from '../sheetItems';
import { linePieces } from './items/linePieces';
import { noteLines } from './items/noteLines';
import { partOfItems } from './items/partOfItems';
import type { SheetContext, SheetKind, SheetPart } from './types';
import { RELIEF, windowReliefs } from './windowSheetReliefs';

/** Paper left around the window, mm: behind the bridge, and beyond its tips. */
const BEHIND = 14;
const BESIDE = 12;
const PITCH = 4.4;
const QUARTER_TURN = Math.PI / 2;

/** A line of the instrument as far as the window leaves paper for it. */
const aroundWindow =
  (outline: Path) =>
  (item: Item): readonly Item[] => {
    if (item.kind === 'text') return [item];
    const { start, segments } = item.path;
    const end = segments.at(-1)?.to ?? start;
    return linePieces([outline], start, end, 'outside').map(({ from, to }, index) => ({
      ...item,
      id: `${item.id}-${index}`,
      path: polyline(from, to),
    }));
  };

/** The octave line beside both ends of the window; its figure stands over it, or along the edge where there is no room. */
const octaveBeside = (outline: Path, octave: number, figure: string, half: number): readonly Item[] => {
  const { minX, maxX } = pathBounds(outline);
  const text = `octave line ${figure}`;
  const words = measureText(text, TEXT_HEIGHT.note, 'regular');
  const level = half + minX >= words + 3;
  const end = level ? minX - words - 2 : -half + 1;
  const at = level ? { x: end, y: octave - 2.2 } : { x: (minX - half) / 2, y: octave + 1.5 };
  return [
    sheetPath(
      'octave-treble',
      'octave-line',
      polyline({ x: maxX + 1.5, y: octave }, { x: level ? 0 - end : half - 1, y: octave }),
    ),
    sheetPath('octave-bass', 'octave-line', polyline({ x: minX - 1.5, y: octave }, { x: end, y: octave })),
    sheetText('octave-label', 'note', at, text, 'start', level ? 0 : QUARTER_TURN),
  ];
};

/** The window: what is cut away grey, its edge, and what is said within it, where the paper falls out. */
const windowItems = (outline: Path, front: number): readonly Item[] => [
  ...windowReliefs(outline).map((centre, index) =>
    sheetPath(`relief-${index}`, 'window', circlePath(centre, RELIEF / 2)),
  ),
  sheetPath('window', 'window', outline),
  sheetPath('cut', 'outline', outline),
  sheetText('cut-label', 'heading', { x: 0, y: front + 4.6 }, 'cut here, on the bench', 'middle'),
  sheetText(
    'cut-drop',
    'note',
    { x: 0, y: front + 4.6 + PITCH },
    'this piece falls out, the bridge drops in',
    'middle',
  ),
];

const notesOf = ({ style }: SheetContext): readonly string[] => [
  `1. Punch the corners, ${showLength(RELIEF, style)}, then cut on the wide line: on the bench, never on the instrument. The window is the bridge’s own size, no clearance.`,
  '2. Set the sheet by the square line, with rule and small square, and sideways by the outer strings and board edges. Tape it all round.',
  '3. Set the bridge into the window without force and read again. Mark or drill through the bridge itself, braces found first.',
  '4. Lift the sheet before glue is spread: wet paper swells, and glue holds it.',
  'Knife: cut away from the holding hand, light passes. Low-tack tape; some finishes do not bear it, try where it does not show.',
];

interface Placed {
  readonly box: DrawingBox;
  readonly half: number;
  readonly outline: Path;
}

const itemsOf = (context: SheetContext, { box: { top }, half, outline }: Placed): readonly Item[] => {
  const { project, derived, style } = context;
  const { board, strings, saddle, bridge, placement } = derived;
  if (!board.ok || !strings.ok || !saddle.ok || !bridge.ok || !placement.ok) return [];
  const { hand, nut } = project.instrument;
  const show = (mm: number): string => showLength(mm, style);
  const bottom = pathBounds(outline).maxY + BEHIND;
  const sided: readonly Item[] = [
    ...windowItems(outline, bridge.value.front),
    ...[...drawBoard(board.value, top, bottom), ...drawOuterStrings(strings.value, saddle.value, top)].flatMap(
      aroundWindow(outline),
    ),
    ...octaveBeside(outline, board.value.octave, show(board.value.octave), half),
    ...drawSides(bridge.value),
  ];
  const heading = `THIS SIDE UP · ${hand} hand`;
  return [
    ...sided.map((item) => handedItem(hand, item)),
    ...drawSquareLine(placement.value.squareLine[style.unit], nut.datum, half, show),
    ...drawNutArrow(half - 8, top + 1),
    ...noteLines({ x: 1 - half, y: bottom + 4 }, 2 * half - 2, heading, notesOf(context)),
  ];
};

const placedOf = (derived: Derived, unit: 'mm' | 'in'): Placed | null => {
  const box = drawingBox(derived, unit);
  if (box === null || !derived.bridge.ok) return null;
  const { outline } = derived.bridge.value.footprint;
  const { minX, maxX } = pathBounds(outline);
  return { box, half: Math.max(box.half, maxX + BESIDE, BESIDE - minX), outline };
};

/** The bridge with no clearance as a window, to be cut out on the bench and set by the square line. Codes: those of the bridge. */
const make = (context: SheetContext): Result<readonly SheetPart[]> => {
  const placed = placedOf(context.derived, context.style.unit);
  if (placed === null) return failed(context.derived.issues);
  return ok([partOfItems('window', 'Window sheet', itemsOf(context, placed))]);
};

/** The window sheet. */
export const windowSheet: SheetKind = {
  id: 'window',
  name: 'Window sheet',
  about: 'A sheet with a window of the bridge’s own size, cut on the bench, into which the bridge drops.',
  make,
};
