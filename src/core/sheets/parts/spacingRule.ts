import { slotSlope } from '../../bridge/slotCuts';
import { handedItem } from '../../drawing/handed';
import { polyline } from '../../drawing/polyline';
import type { Item } from '../../drawing/types';
import { rectanglePath } from '../../geom/rectanglePath';
import { failed, ok, type Result } from '../../result';
import { formatLength } from '../../units/formatLength';
import { sheetPath, sheetText } from '../sheetItems';
import { type SpacingString, spacingStrings } from './gauge/spacingStrings';
import { cardTable } from './items/cardTable';
import { fineLength } from './items/fineLength';
import { partOfItems } from './items/partOfItems';
import { stackItems } from './items/stackItems';
import { withNotes } from './items/withNotes';
import type { SheetContext, SheetKind, SheetPart } from './types';

const TALL = 17;
/** How far a string's centre line and its edges reach up from the foot of a strip, mm. */
const CENTRE = 7;
const EDGE = 4.5;

/** A strip whose foot is laid to the nut or saddle: centres long, edges of the strings short; right hand. half: of the strip. */
const strip = (
  id: string,
  name: string,
  half: number,
  strings: readonly SpacingString[],
  place: (string: SpacingString) => number,
): readonly Item[] => [
  sheetPath(`${id}-piece`, 'outline', rectanglePath(-half, 0 - TALL, 2 * half, TALL)),
  sheetPath(`${id}-middle`, 'centreline', polyline({ x: 0, y: 7 - TALL }, { x: 0, y: 0 })),
  ...strings.flatMap((string, index): readonly Item[] => {
    const x = place(string);
    const line = (end: string, at: number, high: number): Item =>
      sheetPath(`${id}-${index + 1}-${end}`, 'string-line', polyline({ x: at, y: 0 - high }, { x: at, y: 0 }));
    return [
      line('centre', x, CENTRE),
      line('treble-edge', x + string.diameter / 2, EDGE),
      line('bass-edge', x - string.diameter / 2, EDGE),
    ];
  }),
  sheetText(`${id}-bass`, 'note', { x: 1.5 - half, y: 4 - TALL }, 'BASS', 'start'),
  sheetText(`${id}-treble`, 'note', { x: half - 1.5, y: 4 - TALL }, 'TREBLE', 'end'),
  sheetText(`${id}-name`, 'heading', { x: 0, y: 4 - TALL }, name, 'middle'),
];

/** Strips at true size for nut and saddle, with the same places as figures. Codes: those of strings and slot. */
const make = ({ project, derived, style }: SheetContext): Result<readonly SheetPart[]> => {
  const { board, strings, slot } = derived;
  if (!board.ok || !strings.ok || !slot.ok) return failed(derived.issues);
  const { hand } = project.instrument;
  const half = board.value.nutWidth / 2;
  const found = spacingStrings(project.strings, strings.value, half, slotSlope(slot.value));
  const saddleHalf = Math.max(...found.map(({ saddle }) => Math.abs(saddle))) + 6;
  const show = (mm: number): string => formatLength(mm, style);
  const handedAll = (items: readonly Item[]): readonly Item[] => items.map((item) => handedItem(hand, item));
  const table = cardTable(
    'places',
    { x: 0, y: 0 },
    [
      { name: `centres, ${style.unit === 'mm' ? 'mm' : 'inches'}`, width: 34 },
      { name: 'thickness', width: 26 },
      { name: 'nut: from its treble end', width: 46, role: 'heading' },
      { name: 'saddle: from string 1', width: 46, role: 'heading' },
    ],
    found.map(({ name, diameter, fromEnd, fromFirst }, index) => ({
      id: `${index + 1}`,
      cells: [`string ${index + 1} ${name}`, fineLength(diameter, style.unit), show(fromEnd), show(fromFirst)],
    })),
  );
  return ok([
    partOfItems(
      'spacing',
      'Spacing rule, nut and saddle',
      withNotes(
        stackItems(
          [
            handedAll(strip('nut', 'NUT', half, found, ({ nut }) => nut)),
            handedAll(strip('saddle', 'SADDLE', saddleHalf, found, ({ saddle }) => saddle)),
            table,
          ],
          6,
        ),
        `SPACING RULE · THIS SIDE UP, seen from the tail · ${hand} hand`,
        [
          'Cut along the foot of each strip and lay it to the nut and to the saddle, ends of the nut strip at the ends of the nut. Three lines a string: its centre long, its sides short.',
          'The saddle strip lies along the saddle, slant included; its long-dash line on the centreline. Saw or file on the centre, then widen evenly to both sides.',
          'Prove the print by the figures with a steel rule first. Knife: light passes, away from the holding hand, on the bench.',
        ],
      ),
    ),
  ]);
};

/** The spacing rule. */
export const spacingRule: SheetKind = {
  id: 'spacing-rule',
  name: 'Spacing rule',
  about: 'Strips at true size with the centre and both sides of every string, for nut and saddle.',
  make,
};
