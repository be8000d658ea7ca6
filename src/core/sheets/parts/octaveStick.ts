import { polyline } from '../../drawing/polyline';
import type { Item } from '../../drawing/types';
import { rectanglePath } from '../../geom/rectanglePath';
import { DATUM_NAME } from '../../placement/datumName';
import { failed, ok, type Result } from '../../result';
import { formatLength, type LengthStyle } from '../../units/formatLength';
import { showLength } from '../../units/showLength';
import { sheetPath, sheetText } from '../sheetItems';
import { type StickMark, stickMarks } from './gauge/stickMarks';
import { partOfItems } from './items/partOfItems';
import { withNotes } from './items/withNotes';
import type { SheetContext, SheetKind, SheetPart } from './types';

const WIDE = 20;
const LONG = 34;
const PAST = 10;
/** Between figures beside the marks, mm, and where they begin. */
const ROW = 6.2;
const BESIDE = 10;

const nutItems = (): readonly Item[] => [
  sheetPath('piece', 'outline', rectanglePath(0, 0, WIDE, LONG)),
  sheetPath('end', 'rule-line', polyline({ x: 0, y: 0 }, { x: WIDE, y: 0 })),
  sheetText('name', 'heading', { x: WIDE / 2, y: 14 }, 'NUT END', 'middle'),
  sheetText('butts', 'note', { x: WIDE / 2, y: 19 }, 'end of stick', 'middle'),
];

/** The far end: a line a mark, led to its name and its length from the nut end. */
const farItems = (marks: readonly StickMark[], style: LengthStyle): readonly Item[] => {
  const octave = marks.find(({ id }) => id === 'octave')?.at ?? 0;
  const places = marks.map(({ at }) => at - octave);
  const [least, most] = [Math.min(...places), Math.max(...places)];
  const first = (least + most) / 2 - ((marks.length - 1) * ROW) / 2;
  return [
    sheetPath('piece', 'outline', rectanglePath(0, least - LONG, WIDE, most - least + LONG + PAST)),
    sheetText('name', 'heading', { x: WIDE / 2, y: least - 18 }, 'FAR END', 'middle'),
    sheetText('toward', 'note', { x: WIDE / 2, y: least - 23 }, '↑ NUT SIDE', 'middle'),
    ...marks.flatMap(({ id, label, at }, index): readonly Item[] => {
      const y = at - octave;
      const row = first + index * ROW;
      const shelf = WIDE + BESIDE;
      return [
        sheetPath(id, 'rule-line', polyline({ x: 0, y }, { x: WIDE, y })),
        sheetPath(
          `${id}-leader`,
          'dimension',
          polyline({ x: WIDE, y }, { x: shelf - 3, y: row }, { x: shelf - 1, y: row }),
        ),
        sheetText(`${id}-figure`, 'key', { x: shelf, y: row }, formatLength(at, style)),
        sheetText(`${id}-label`, 'note', { x: shelf + 24, y: row + 0.4 }, label),
      ];
    }),
  ];
};

/** Both ends of the octave stick at true size; its length as numbers, since paper carries no length. Codes: those of the bridge. */
const make = ({ project, derived, style }: SheetContext): Result<readonly SheetPart[]> => {
  const { board, saddle } = derived;
  if (!board.ok || !saddle.ok) return failed(derived.issues);
  const { hand, nut } = project.instrument;
  const marks = stickMarks(board.value, saddle.value);
  const octave = marks.find(({ id }) => id === 'octave')?.at ?? 0;
  const moved = marks.some(({ id }) => id === 'twelfth');
  const datum = DATUM_NAME[nut.datum].full;
  const unit = style.unit === 'mm' ? 'mm' : 'inches';
  return ok([
    partOfItems(
      'stick-nut',
      'Octave stick, nut end',
      withNotes(nutItems(), `NUT END · THIS SIDE UP · ${hand} hand`, [
        `The bold line is the end of the stick, cut square: it meets the ${datum}.`,
      ]),
    ),
    partOfItems(
      'stick-far',
      'Octave stick, far end',
      withNotes(farItems(marks, style), `FAR END · THIS SIDE UP · ${hand} hand · figures from the nut end, ${unit}`, [
        `1. Paste the far end on a straight stick so that its octave line lies ${showLength(octave, style)} from the nut end by steel rule. Paper carries no length: only the ends are printed, and the far end is short enough to be true.`,
        moved
          ? '2. Lay it from the nut: the 12th fret’s crown meets the mark of the first lay. It differs from the octave’s since the nut was moved.'
          : '2. Lay it from the nut: the crown of the 12th fret meets the octave line. If it does not, measure the scale again before anything else.',
        '3. Walk it on: nut end on the crown of the 12th fret, along the centreline, level with the frets. Marks beyond the octave line are where the outer strings and the middle of the saddle break. A small square carries them down to the bridge.',
        'Lay it straight along the centreline for treble and bass alike: the marks are lengths along it, not along the strings.',
      ]),
    ),
  ]);
};

/** The octave stick. */
export const octaveStick: SheetKind = {
  id: 'octave-stick',
  name: 'Octave stick, both ends',
  about: 'Marks for a stick laid from the nut to the 12th fret and walked on: octave line and break points.',
  make,
};
