import type { Sole, SoleGaps } from '../../document/soleTypes';
import type { Point } from '../../geom/types';
import type { SoleFit } from '../../height/sole/soleTypes';
import { DIMENSION } from '../dimensions/measures';
import { arrowhead } from '../dimensions/pieces';
import type { Item } from '../types';
import { soleHeight } from './lengthProfile';
import { rowsApart } from './rowsApart';
import { at, sideLine, sideShape, sideText } from './sideItems';

/** Fields of the thickness at each named point. */
const THICKNESS_FIELD: Readonly<Record<keyof SoleGaps, string>> = {
  bassTip: 'bridge.sole.wing.tip',
  bassWing: 'bridge.sole.wing.inner',
  centre: 'bridge.thickness',
  trebleWing: 'bridge.sole.wing.inner',
  trebleTip: 'bridge.sole.wing.tip',
};

/** How far beside its place a dimension of thickness stands where the place is an edge, mm. */
const BESIDE = 3;
/** From this on the wing begins with an edge, mm. */
const STEP = 0.5;
/** Largest height of the magnified strip on the page, mm, and how many times it may be magnified. */
const TALLEST = 24;
/** From a figure's middle up to its line, mm. */
const TO_FIGURE = 2.6;
/** From one row of figures to the next, mm. */
const ROW = 4.4;
const MAGNIFIED = [20, 10, 5, 2, 1] as const;

/** How many times as high the gap is drawn: 20, or less for a large one. */
export const magnifiedBy = (gap: number): number => MAGNIFIED.find((times) => gap * times <= TALLEST) ?? 1;

/**
 * A line with arrowheads through the bridge at each named point, or beside an edge there, and its figure in a row below.
 * shoulder: height of the upper face where the wings begin; row: of the figures.
 */
export const thicknessRow = (
  sole: Sole,
  fit: SoleFit,
  shoulder: number,
  row: number,
  show: (mm: number) => string,
): readonly Item[] =>
  fit.points.flatMap(({ name, x, thickness }): readonly Item[] => {
    const isTip = name === 'bassTip' || name === 'trebleTip';
    const side = Math.sign(x);
    const base = soleHeight(sole, x);
    const step = name !== 'centre' && Math.abs(base + thickness - shoulder) > STEP;
    const place = isTip || step ? x + side * BESIDE : x;
    const inward = thickness < DIMENSION.roomForArrows ? 1 : -1;
    const words = { id: `thick-${name}`, part: THICKNESS_FIELD[name], layer: 'sheet' as const, text: '' };
    const line = (piece: string, ...[from, to]: readonly [Point, Point]): Item =>
      sideLine(`${words.id}-${piece}`, words.part, 'dimension', from, to);
    const over = inward > 0 ? DIMENSION.outside : 0;
    return [
      line('line', at(place, base + thickness + over), at(place, row + TO_FIGURE)),
      ...[base, base + thickness].flatMap((height, index) =>
        isTip
          ? [
              line(
                `witness-${index + 1}`,
                at(x + side * DIMENSION.gap, height),
                at(place + side * DIMENSION.past, height),
              ),
            ]
          : [],
      ),
      arrowhead(words, 'up', at(place, base + thickness), { x: 0, y: inward }),
      arrowhead(words, 'down', at(place, base), { x: 0, y: -inward }),
      sideText(`${words.id}-text`, words.part, 'label', at(place, row), show(thickness), 'middle'),
    ];
  });

/** The gap between sole and top, magnified, under a straight line for the sole, with its figures below. */
export const gapStrip = (
  { top }: Sole,
  fit: SoleFit,
  line: number,
  times: number,
  show: (mm: number) => string,
): { readonly items: readonly Item[]; readonly bottom: number } => {
  const { curve, points, places } = fit;
  const depth = Math.max(2, fit.worst.gap * times);
  const first = line - depth - 4;
  const rows = rowsApart(points.map(({ x, gap }) => ({ x, lines: [show(gap)] })));
  const rowOf = (index: number): number => first - (rows[index] ?? 0) * ROW;
  return {
    items: [
      sideShape(
        'gap',
        'gap',
        'plot-bar',
        at(places.bassTip, line),
        ...curve.map(({ x, y }) => at(x, line - y * times)),
        at(places.trebleTip, line),
      ),
      sideLine('gap-sole', 'gap', 'outline', at(places.bassTip, line), at(places.trebleTip, line)),
      ...points.flatMap(({ name, x, gap }, index): readonly Item[] => [
        sideLine(`gap-${name}-line`, 'gap', 'dimension', at(x, line), at(x, rowOf(index) + TO_FIGURE)),
        sideText(
          `gap-${name}-text`,
          top.from === 'gaps' ? `bridge.sole.top.gaps.${name}` : 'bridge.sole.top.across',
          gap === fit.worst.gap && gap > 0 ? 'heading' : 'label',
          at(x, rowOf(index)),
          show(gap),
          'middle',
        ),
      ]),
    ],
    bottom: Math.min(...points.map((_, index) => rowOf(index))),
  };
};
