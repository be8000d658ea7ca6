import { mirrorBody } from '../../body/mirrorBody';
import type { BodyPlace, BracePlace } from '../../body/types';
import type { Cutaway } from '../../document/bodyTypes';
import type { Hand } from '../../document/types';
import { pathBounds } from '../../geom/pathBounds';
import { distance } from '../../geom/points';
import type { Bounds, Path, Point } from '../../geom/types';
import { measureText } from '../../text/measureText';
import { drawHoles } from '../drawHoles';
import { polyline } from '../polyline';
import { TEXT_HEIGHT } from '../textHeights';
import type { Item, Role } from '../types';
import { clipToBounds } from './clipToBounds';
import { wordsAlong } from './wordsAlong';

/** How far around the bridge the body is drawn, mm. */
const IN_SIGHT = 260;
/** From a line to the middle of its words, mm. */
const BESIDE = 4;
/** Arms of the corner that stands for a cutaway, mm. */
const CUTAWAY_ARM = 60;

const line = (id: string, part: string, role: Role, path: Path): Item => ({
  kind: 'path',
  id: `body-${id}`,
  part,
  role,
  layer: 'body',
  path,
});

const words = (id: string, part: string, text: string, at: Point, angle = 0): Item => ({
  kind: 'text',
  id: `body-${id}-name`,
  part,
  role: 'note',
  layer: 'body',
  at,
  text,
  height: TEXT_HEIGHT.note,
  anchor: 'middle',
  angle,
});

/** Both sides of a brace as far as they are in sight, and what it is called, along it: with a question mark while it is a guess. */
const drawBrace = (brace: BracePlace, sight: Bounds, bridge: Bounds): readonly Item[] => {
  const { id, name, part, from, to, width, read } = brace;
  const length = distance(from, to);
  const [x, y] = [((to.y - from.y) / length) * (width / 2), ((from.x - to.x) / length) * (width / 2)];
  const sides = [1, -1].flatMap((sign): readonly Item[] => {
    const beside = (point: Point): Point => ({ x: point.x + sign * x, y: point.y + sign * y });
    const seen = clipToBounds(beside(from), beside(to), sight);
    return seen === null ? [] : [line(`${id}-${sign}`, part, 'beneath', polyline(...seen))];
  });
  const middle = clipToBounds(from, to, sight);
  if (middle === null || distance(...middle) === 0) return sides;
  const text = read ? name : `${name}?`;
  const { at, angle } = wordsAlong(...middle, measureText(text, TEXT_HEIGHT.note, 'regular'), bridge);
  return [...sides, words(id, part, text, at, angle)];
};

const drawCutaway = ({ side, aside, end }: Cutaway): readonly Item[] => {
  const sign = side === 'treble' ? 1 : -1;
  const corner: Point = { x: sign * aside, y: end };
  const path = polyline({ x: corner.x, y: end - CUTAWAY_ARM }, corner, { x: corner.x + sign * CUTAWAY_ARM, y: end });
  const at: Point = { x: corner.x + (sign * CUTAWAY_ARM) / 2, y: end + BESIDE };
  return [line('cutaway', 'cutaway', 'board-edge', path), words('cutaway', 'cutaway', 'cutaway', at)];
};

const drawPlate = (path: Path): readonly Item[] => {
  const { minX, maxX, maxY } = pathBounds(path);
  const at: Point = { x: (minX + maxX) / 2, y: maxY + BESIDE };
  return [line('plate', 'bridge plate', 'beneath', path), words('plate', 'bridge plate', 'bridge plate', at)];
};

const drawSoundhole = (path: Path): readonly Item[] => {
  const { minX, maxX, minY, maxY } = pathBounds(path);
  const at: Point = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  return [line('soundhole', 'soundhole', 'board-edge', path), words('soundhole', 'soundhole', 'soundhole', at)];
};

const meets = (one: Bounds, other: Bounds): boolean =>
  one.minX <= other.maxX && one.maxX >= other.minX && one.minY <= other.maxY && one.maxY >= other.minY;

/**
 * What lies beneath and around the bridge, as it is seen on a body built for `hand`: dashed beneath the top, the edges of
 * soundhole and cutaway as edges of a neighbouring part; only what is near the bridge. built: body frame. bridge: the box of
 * the footprint as it is seen. Its items are on their own side already.
 */
export const drawBody = (built: BodyPlace, hand: Hand, bridge: Bounds): readonly Item[] => {
  const { braces, plate, soundhole, wireHole, cutaway } = hand === 'left' ? mirrorBody(built) : built;
  const sight: Bounds = {
    minX: bridge.minX - IN_SIGHT,
    maxX: bridge.maxX + IN_SIGHT,
    minY: bridge.minY - IN_SIGHT,
    maxY: bridge.maxY + IN_SIGHT,
  };
  const seen = (path: Path | null): path is Path => path !== null && meets(pathBounds(path), sight);
  return [
    ...(seen(soundhole) ? drawSoundhole(soundhole) : []),
    ...(cutaway !== null && cutaway.end >= sight.minY && cutaway.end <= sight.maxY ? drawCutaway(cutaway) : []),
    ...braces.flatMap((brace) => drawBrace(brace, sight, bridge)),
    ...(seen(plate) ? drawPlate(plate) : []),
    ...(wireHole === null ? [] : drawHoles([wireHole], 'body')),
  ];
};
