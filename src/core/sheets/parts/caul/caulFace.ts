import type { BridgePlace, Hole } from '../../../bridge/types';
import type { Hand } from '../../../document/types';
import { linearDimension } from '../../../drawing/dimensions/linearDimension';
import { drawHoles } from '../../../drawing/drawHoles';
import { drawNutArrow } from '../../../drawing/drawSides';
import { handedItem } from '../../../drawing/handed';
import { polyline } from '../../../drawing/polyline';
import { itemBounds } from '../../../drawing/shapePreview/itemBounds';
import type { Item, TextItem } from '../../../drawing/types';
import { pathBounds } from '../../../geom/pathBounds';
import { pathCentroid } from '../../../geom/pathCentroid';
import { pathContains } from '../../../geom/pathContains';
import type { LengthStyle } from '../../../units/formatLength';
import { showLength } from '../../../units/showLength';
import { sheetPath, sheetText } from '../../sheetItems';
import type { CaulShape } from './caulShape';

const BEYOND = 6;
const AHEAD = 22;
/** From the caul to its dimension lines, mm. */
const TO_DIMENSION = 8;

/** Letters by which a groove and its row of the notes find one another. */
export const grooveLetter = (index: number): string => String.fromCharCode(65 + (index % 26));

/** The holes that clear the locating pins, those within the caul. */
export const clearanceHoles = (
  shape: Pick<CaulShape, 'outline'>,
  { locating }: Pick<BridgePlace, 'locating'>,
  clearance: number,
): readonly Hole[] =>
  locating.flatMap((hole) =>
    pathContains(shape.outline, hole.centre) ? [{ ...hole, diameter: hole.diameter + clearance }] : [],
  );

/** What is cut into the plate face: seen from it, or hidden beneath it. */
const cuts = ({ grooves, relief }: CaulShape, seen: boolean): readonly Item[] => [
  ...(relief === null ? [] : [sheetPath('relief', seen ? 'slot' : 'beneath', relief)]),
  ...grooves.map(({ outline }, index) => sheetPath(`groove-${index}`, seen ? 'window' : 'beneath', outline)),
];

/** The centreline, with gaps where words stand on it. */
const centreline = (from: number, to: number, words: readonly TextItem[]): readonly Item[] => {
  const gaps = words
    .map(itemBounds)
    .filter(({ minX, maxX }) => minX < 1 && maxX > -1)
    .sort((one, other) => one.minY - other.minY);
  const begins = [from, ...gaps.map(({ maxY }) => maxY + 1)];
  const ends = [...gaps.map(({ minY }) => minY - 1), to];
  return begins.flatMap((begin, index) => {
    const end = ends[index] ?? to;
    if (end - begin < 1) return [];
    return [sheetPath(`centreline-${index}`, 'centreline', polyline({ x: 0, y: begin }, { x: 0, y: end }))];
  });
};

/**
 * One face of the inside caul on the side of a hand, the nut end away. A face that is seen from inside the body is given the
 * other hand, so that all of it lies mirrored and its words do not. name: written on the face.
 */
export const caulFace = (
  shape: CaulShape,
  footprint: BridgePlace['footprint'],
  holes: readonly Hole[],
  { name, hand, seen, style }: { name: string; hand: Hand; seen: boolean; style: LengthStyle },
): readonly Item[] => {
  const { minX, maxX, minY, maxY } = pathBounds(shape.outline);
  const letters = shape.grooves.map(({ outline }, index) =>
    sheetText(`letter-${index}`, 'heading', pathCentroid(outline), grooveLetter(index), 'middle'),
  );
  const face = sheetText('face', 'key', { x: 0, y: (minY + 2 * maxY) / 3 }, name, 'middle');
  const sided: readonly Item[] = [
    ...cuts(shape, seen),
    sheetPath('bridge', 'beneath', footprint.outline),
    sheetPath('caul', 'outline', shape.outline),
    ...centreline(minY - BEYOND, maxY + BEYOND, seen ? [...letters, face] : [face]),
    ...drawHoles(holes, 'locating'),
    ...(seen ? letters : []),
    face,
    sheetText('bass', 'heading', { x: minX, y: minY - 4 }, 'BASS', 'start'),
    sheetText('treble', 'heading', { x: maxX, y: minY - 4 }, 'TREBLE', 'end'),
  ];
  const half = Math.max(maxX, -minX);
  const words = { part: 'sheet', layer: 'sheet' } as const;
  const [left, right] = hand === 'right' ? [minX, maxX] : [0 - maxX, 0 - minX];
  return [
    ...sided.map((item) => handedItem(hand, item)),
    ...drawNutArrow(0, minY - AHEAD),
    ...linearDimension(
      { x: left, y: maxY },
      { x: right, y: maxY },
      {
        ...words,
        id: 'across',
        text: showLength(shape.across, style),
        direction: 'across',
        offset: TO_DIMENSION,
        slide: half / 2,
      },
    ),
    ...linearDimension(
      { x: right, y: minY },
      { x: right, y: maxY },
      { ...words, id: 'along', text: showLength(shape.along, style), direction: 'along', offset: TO_DIMENSION },
    ),
  ];
};
