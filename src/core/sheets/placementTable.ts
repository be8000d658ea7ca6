import type { NutDatum } from '../document/types';
import type { Item } from '../drawing/types';
import type { Point } from '../geom/types';
import { DATUM_NAME } from '../placement/datumName';
import type { Placement } from '../placement/types';
import { formatLength, type LengthStyle } from '../units/formatLength';
import { MM_PER_INCH } from '../units/mmPerInch';
import { showLength } from '../units/showLength';
import { sheetLine, sheetText } from './sheetItems';

const PITCH = 4.5;
const COLUMN = 18;
/** When there are three columns of figures, so that they leave room for the names of the rows. */
const NARROW_COLUMN = 15;

/** Height of the table, mm. */
export const placementTableHeight = (placement: Placement): number => (placement.numbers.length + 2) * PITCH + 1;

/** What a small error along the centreline costs at the 12th fret, in a step of the maker's own rule. */
const centsWords = (centsPerMm: number, style: LengthStyle): string =>
  style.unit === 'mm'
    ? `1 mm = ${centsPerMm.toFixed(1)} cents`
    : `1/32″ = ${((centsPerMm * MM_PER_INCH) / 32).toFixed(1)} cents`;

/** Every placement number from each datum, side by side. slotLength: over which the slant is told as a rise. */
export const placementTable = (
  at: Point,
  width: number,
  placement: Placement,
  datum: NutDatum,
  slotLength: number,
  style: LengthStyle,
): readonly Item[] => {
  const right = at.x + width;
  const withFace = placement.numbers.some(({ fromNutFace }) => fromNutFace !== null);
  const names = [DATUM_NAME[datum].short, ...(withFace ? ['nut face'] : []), '12th fret'];
  const pitch = withFace ? NARROW_COLUMN : COLUMN;
  const column = (index: number): number => right - (names.length - 1 - index) * pitch;
  const row = (index: number): number => at.y + 2 + index * PITCH;
  const last = placement.numbers.length + 1;
  const rise = Math.abs(Math.sin(placement.slant) * slotLength);
  const degrees = ((Math.abs(placement.slant) * 180) / Math.PI).toFixed(2);
  return [
    sheetText('place-heading', 'heading', { x: at.x, y: row(0) }, 'Place by these'),
    ...names.map((name, index) =>
      sheetText(`place-column-${index}`, 'note', { x: column(index), y: row(0) }, name, 'end'),
    ),
    ...placement.numbers.flatMap(({ id, label, fromNut, fromTwelfth, fromNutFace }, index): readonly Item[] => {
      const figures = [fromNut, ...(withFace ? [fromNutFace ?? fromNut] : []), fromTwelfth];
      const y = row(index + 1);
      return [
        sheetText(`place-${id}`, 'note', { x: at.x, y }, label),
        ...figures.map((mm, place) =>
          sheetText(`place-${id}-${place}`, 'heading', { x: column(place), y }, formatLength(mm, style), 'end'),
        ),
        sheetLine(`place-${id}-line`, 'cross', { x: at.x, y: y + PITCH / 2 }, { x: right, y: y + PITCH / 2 }),
      ];
    }),
    sheetText(
      'place-slant',
      'note',
      { x: at.x, y: row(last) },
      `Slant ${showLength(rise, style)} over ${showLength(slotLength, style)} (${degrees}°)`,
    ),
    sheetText('place-cents', 'note', { x: right, y: row(last) }, centsWords(placement.centsPerMm, style), 'end'),
  ];
};
