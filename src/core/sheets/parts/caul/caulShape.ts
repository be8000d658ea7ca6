import type { BodyPlace, BracePlace } from '../../../body/types';
import { bodyLimit } from '../../../checks/body/bodyLimits';
import type { Project } from '../../../document/types';
import { pathArea } from '../../../geom/pathArea';
import { pathBounds } from '../../../geom/pathBounds';
import { add, distance, scale, subtract } from '../../../geom/points';
import { rectanglePath } from '../../../geom/rectanglePath';
import { signedArea } from '../../../geom/signedArea';
import type { Path, Point } from '../../../geom/types';
import { clipConvex } from './clipConvex';

/** A groove of the caul: over which brace, and where. */
export interface Groove {
  readonly brace: BracePlace;
  readonly outline: Path;
}

/** The inside caul in plan, instrument frame. */
export interface CaulShape {
  readonly outline: Path;
  /** Across the instrument, and along the centreline, mm. */
  readonly across: number;
  readonly along: number;
  readonly grooves: readonly Groove[];
  /** Sunk by the thickness of the plate; null without a plate, or where the plate lies under all of the caul. */
  readonly relief: Path | null;
}

/** Less of a groove than this is not cut, mm². */
const NOTHING = 1;

const cornersOf = ({ start, segments }: Path): readonly Point[] =>
  [start, ...segments.map(({ to }) => to)].filter((point, index, all) =>
    all.slice(0, index).every((other) => distance(other, point) > 1e-6),
  );

/** Corners of a brace, clockwise as seen on the page. */
const braceCorners = ({ from, to, width }: BracePlace): readonly Point[] => {
  const way = scale(subtract(to, from), width / 2 / distance(from, to));
  const aside: Point = { x: 0 - way.y, y: way.x };
  return [subtract(from, aside), subtract(to, aside), add(to, aside), add(from, aside)];
};

const polygon = (corners: readonly Point[]): Path | null => {
  const [start, ...rest] = corners;
  if (start === undefined || rest.length < 2) return null;
  const path: Path = { start, segments: [...rest, start].map((to) => ({ kind: 'line', to })), closed: true };
  return pathArea(path) < NOTHING ? null : path;
};

const clockwise = (path: Path): readonly Point[] =>
  signedArea(path) < 0 ? [...cornersOf(path)].reverse() : cornersOf(path);

/** The smallest upright rectangle around the bridge with margins, what is cut out of it for braces and plate. */
export const caulShape = (footprint: Path, { braces, plate }: BodyPlace, limits: Project['limits']): CaulShape => {
  const { minX, maxX, minY, maxY } = pathBounds(footprint);
  const [aside, ahead] = [bodyLimit('caulAcross', limits).value, bodyLimit('caulAlong', limits).value];
  const room = bodyLimit('caulGroove', limits).value;
  const [across, along] = [maxX - minX + 2 * aside, maxY - minY + 2 * ahead];
  const outline = rectanglePath(minX - aside, minY - ahead, across, along);
  const corners = cornersOf(outline);
  const relief = plate === null ? null : polygon(clipConvex(corners, clockwise(plate), room));
  return {
    outline,
    across,
    along,
    grooves: braces.flatMap((brace): readonly Groove[] => {
      const groove = polygon(clipConvex(corners, braceCorners(brace), room));
      return groove === null ? [] : [{ brace, outline: groove }];
    }),
    relief: relief !== null && pathArea(relief) < across * along - NOTHING ? relief : null,
  };
};
