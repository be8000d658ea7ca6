import { handedItem } from '../../drawing/handed';
import { DATUM_NAME } from '../../placement/datumName';
import { failed, ok, type Result } from '../../result';
import { formatLength } from '../../units/formatLength';
import { showLength } from '../../units/showLength';
import { gaugeNumbers } from './gauge/gaugeNumbers';
import { nutEnd } from './gauge/nutEnd';
import { saddleKeyEnd } from './gauge/saddleKeyEnd';
import { cardTable } from './items/cardTable';
import { fineLength } from './items/fineLength';
import { partOfItems } from './items/partOfItems';
import { stackItems } from './items/stackItems';
import { withNotes } from './items/withNotes';
import type { SheetContext, SheetKind, SheetPart } from './types';

const COLUMN = { treble: 'T, treble string', centre: 'C, centreline', bass: 'B, bass string' } as const;

/**
 * Both ends of a gauge that sets the bridge, each at true size; the length between them as numbers, since paper carries no
 * length. Codes: those of the bridge.
 */
const make = ({ project, derived, style }: SheetContext): Result<readonly SheetPart[]> => {
  const { board, strings, saddle, slot, placement } = derived;
  if (!board.ok || !strings.ok || !saddle.ok || !slot.ok || !placement.ok) return failed(derived.issues);
  const { hand, nut } = project.instrument;
  const show = (mm: number): string => showLength(mm, style);
  const numbers = gaugeNumbers(saddle.value, slot.value);
  // Columns stand as the drawing lies.
  const columns = hand === 'right' ? [...numbers].reverse() : numbers;
  const datum = DATUM_NAME[nut.datum].full;
  const line = placement.value.squareLine[style.unit].fromNut;
  const end = saddleKeyEnd(slot.value, saddle.value, numbers, line, `square line ${show(line)}`).map((item) =>
    handedItem(hand, item),
  );
  const figures = (pick: (at: (typeof numbers)[number]) => number): readonly string[] =>
    columns.map((at) => formatLength(pick(at), style));
  const unit = style.unit === 'mm' ? 'mm' : 'inches';
  const table = cardTable(
    'lengths',
    { x: 0, y: 0 },
    [
      { name: `from the ${datum}, ${unit}`, width: 62 },
      ...columns.map(({ id }) => ({
        name: COLUMN[id],
        width: 30,
        role: 'key' as const,
      })),
    ],
    [
      { id: 'square', cells: ['square line (the same all along)', ...figures(() => line)] },
      { id: 'front', cells: ['slot front: front wall of the key', ...figures(({ slotFront }) => slotFront)] },
      { id: 'break', cells: ['break point on the saddle', ...figures(({ breakPoint }) => breakPoint)] },
    ],
  );
  const face = nut.datum === 'zero-fret' ? nut.face : 0;
  return ok([
    partOfItems(
      'gauge-nut',
      'Placing gauge, nut end',
      withNotes(
        nutEnd(board.value, strings.value, nut.datum, face).map((item) => handedItem(hand, item)),
        `NUT END · THIS SIDE UP · ${hand} hand`,
        [
          `Paste it on the end of a straight, flat stick that lies on the frets. Everything is measured from the ${datum}.`,
          ...(face > 0
            ? [`The end of the stick butts to the nut’s front face, ${show(face)} behind the crown of the zero fret.`]
            : []),
          'Long-dash lines: edges of the board. Fine lines: outer strings. Both together keep the stick straight on the neck.',
        ],
      ),
    ),
    partOfItems(
      'gauge-saddle',
      'Placing gauge, saddle-key end',
      withNotes(
        stackItems([end, table]),
        `SADDLE-KEY END · THIS SIDE UP · for this scale, slot and ${hand} hand alone`,
        [
          `1. Fit a key of hard wood, ${fineLength(project.bridge.slot.width, style.unit)} ${unit} thick, under the slot’s outline. It drops into the slot without play and without force.`,
          `2. Set this end on the stick by steel rule from the ${datum}: the square line at ${show(line)}. Paper carries no length: the print of either end is short enough to be true, the length between them is the rule’s.`,
          '3. Read the slot front at T, C and B as well before the glue sets: all three must agree, or the end stands askew. In each pair of short lines the one toward the nut is the slot front, the other the break point.',
          '4. Use: nut end to its datum, key in the slot, stick along the middle of the board; tape the bridge, lift the gauge, read by rule again.',
          'Knife and saw: cut away from the holding hand, work clamped.',
        ],
      ),
    ),
  ]);
};

/** The placing gauge. */
export const gaugeEnds: SheetKind = {
  id: 'gauge-ends',
  name: 'Placing gauge, both ends',
  about: 'Both ends of a home-made gauge with a key for the saddle slot; the length between them is set by steel rule.',
  make,
};
