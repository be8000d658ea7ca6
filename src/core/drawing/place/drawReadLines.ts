import { shiftPath } from '../../geom/edit/shiftPath';
import type { Path, Point } from '../../geom/types';
import type { ReadLine } from '../../placement/reading/types';
import { polyline } from '../polyline';
import type { Item } from '../types';
import { placePathItem, placeSpot, placeWords, SPOT } from './placeItems';
import type { PlaceMap } from './placeMap';
import { spotPlaces } from './spotPlaces';

/** Lines along the neck that lie on one another are drawn side by side, mm of the picture. */
const LANE = 3;
const TICK = 1.1;
/** From a number to the middle of the figure beside it, mm of the picture. */
const FIGURE = 8;

/** A line with its number in the picture. */
export interface NumberedLine {
  readonly number: number;
  readonly line: ReadLine;
  readonly read: boolean;
}

/** Where a line's number stands, by the line's id: what a press on the picture leads to. */
export interface Spot {
  readonly line: string;
  readonly at: Point;
}

/** Rules laid from point to point; the rest follow the instrument's own lines. */
const POINT_TO_POINT: readonly string[] = ['corners', 'compare', 'pair'];

const isAlong = ({ drawn }: ReadLine): boolean => {
  const [first] = drawn;
  return drawn.length === 1 && first !== undefined && Math.abs(first[0].x - first[1].x) < 1e-9;
};

/** The tool's ways of one line in the picture; one along the neck in its own lane, with ticks at its ends. */
const waysOf = (line: ReadLine, map: PlaceMap, lane: number): readonly Path[] => {
  const draw = POINT_TO_POINT.includes(line.group) ? map.straight : map.line;
  const ways = line.drawn.map(([from, to]) => draw(from, to));
  const [way] = ways;
  if (!isAlong(line) || way === undefined) return ways;
  const outward = way.start.x < map.width / 2 ? -1 : 1;
  const moved = shiftPath(way, { x: outward * lane * LANE, y: 0 });
  const tick = ({ x, y }: Point): Path => polyline({ x: x - TICK, y }, { x: x + TICK, y });
  return [moved, tick(moved.start), tick(moved.segments.at(-1)?.to ?? moved.start)];
};

/** Lanes of lines along the neck: the next free one on its side of the centreline. */
const lanesOf = (lines: readonly ReadLine[]): readonly number[] => {
  const next = { treble: 0, bass: 0 };
  return lines.map((line) => {
    if (!isAlong(line)) return 0;
    const side = (line.drawn[0]?.[0].x ?? 0) > 0 ? 'treble' : 'bass';
    next[side] += 1;
    return next[side] - 1;
  });
};

/**
 * The lines to read with their numbers, and the one in hand picked out with what is expected there, in words; it may be one
 * without a number.
 */
export const drawReadLines = (
  map: PlaceMap,
  numbered: readonly NumberedLine[],
  inHand: ReadLine | null,
  expected: string,
): { readonly items: readonly Item[]; readonly spots: readonly Spot[] } => {
  const loose = inHand === null || numbered.some(({ line }) => line.id === inHand.id) ? [] : [inHand];
  const lines = [...numbered.map(({ line }) => line), ...loose];
  const lanes = lanesOf(lines);
  const ways = lines.map((line, index) => waysOf(line, map, lanes[index] ?? 0));
  const centre = map.width / 2;
  const places = spotPlaces(
    ways.map(([way]) => way ?? polyline({ x: centre, y: 0 })),
    centre,
    map,
  );
  const held = lines.findIndex(({ id }) => id === inHand?.id);
  const at = places[held] ?? { x: centre, y: 0 };
  const aside = (side: 1 | -1): Point => ({ x: at.x + side * FIGURE, y: at.y });
  const room = (side: 1 | -1): number =>
    Math.min(
      ...places.filter((_, index) => index !== held).map(({ x, y }) => Math.hypot(x - aside(side).x, y - at.y)),
      aside(side).x,
      map.width - aside(side).x,
    );
  const toLeft = room(-1) > room(1);
  return {
    items: [
      ...lines.flatMap((line, index) =>
        (ways[index] ?? []).map((way, part) =>
          placePathItem(`${line.id}-${part}`, index === held ? 'square-line' : 'rule-line', way),
        ),
      ),
      ...numbered.flatMap(({ number, line, read }, index) =>
        placeSpot(
          line.id,
          places[index] ?? { x: centre, y: 0 },
          number,
          index === held ? 'held' : read ? 'read' : 'plain',
        ),
      ),
      ...(held < 0
        ? []
        : [
            placeWords(
              'expected',
              'heading',
              { x: at.x + (toLeft ? -1 : 1) * (SPOT + 1.6), y: at.y },
              expected,
              toLeft ? 'end' : 'start',
            ),
          ]),
    ],
    spots: numbered.map(({ line }, index) => ({ line: line.id, at: places[index] ?? { x: centre, y: 0 } })),
  };
};
