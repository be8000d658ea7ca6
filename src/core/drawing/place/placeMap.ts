import type { Hand } from '../../document/types';
import { placePath } from '../../geom/placePath';
import type { Path, Point } from '../../geom/types';
import type { ReadCase } from '../../placement/reading/readCase';
import { handed } from '../handed';
import { polyline } from '../polyline';

/** mm of the picture: half a bridge, from the nut to the 12th fret, and on to where the bridge's own scale begins. */
const HALF_BRIDGE = 32;
const TO_TWELFTH = 11;
const TO_BRIDGE = 28;
/** From so far ahead of the bridge it is drawn in proportion. */
const AHEAD = 8;
/** Room around. */
const OVER = 7;
const BENEATH = 16;
const ASIDE = 8;

/** How the picture lies on the instrument. */
export interface PlaceMap {
  readonly width: number;
  readonly height: number;
  /** mm of the picture to one of the instrument, at the bridge and everywhere across. */
  readonly scale: number;
  /** Where a point of the instrument lies in the picture, on the hand's side. */
  readonly at: (point: Point) => Point;
  /** A path at the bridge. */
  readonly path: (path: Path) => Path;
  /** A straight line of the instrument, with a bend wherever the scale changes. */
  readonly line: (from: Point, to: Point) => Path;
  /** The same from end to end without a bend: a rule laid across. */
  readonly straight: (from: Point, to: Point) => Path;
}

/** The whole instrument from nut to bridge: the bridge in proportion, the neck shortened to what a screen holds. */
export const placeMap = ({ bridge, board }: ReadCase, hand: Hand): PlaceMap => {
  const scale = HALF_BRIDGE / Math.max(...bridge.points.map(({ at }) => Math.abs(at.x)));
  const back = Math.max(...bridge.points.map(({ at }) => at.y), bridge.front + 30);
  const width = 2 * (HALF_BRIDGE + ASIDE);
  const { twelfth } = board;
  const from = bridge.front - AHEAD / scale;
  const inProportion = (y: number): number => OVER + TO_TWELFTH + TO_BRIDGE + (y - from) * scale;
  const down = (y: number): number => {
    if (y >= from) return inProportion(y);
    if (y >= twelfth) return OVER + TO_TWELFTH + (TO_BRIDGE * (y - twelfth)) / (from - twelfth);
    return OVER + (TO_TWELFTH * y) / twelfth;
  };
  const placed =
    (level: (y: number) => number) =>
    (point: Point): Point => {
      const on = handed(hand, point);
      return { x: width / 2 + on.x * scale, y: level(on.y) };
    };
  const at = placed(down);
  const path = (drawn: Path): Path => {
    // Centres of long arcs lie far up the neck: the bridge's own scale counts for them too.
    const inPlace = placePath(drawn, placed(inProportion));
    if (hand === 'right') return inPlace;
    return {
      ...inPlace,
      segments: inPlace.segments.map((each) => (each.kind === 'arc' ? { ...each, clockwise: !each.clockwise } : each)),
    };
  };
  const line = (start: Point, end: Point): Path => {
    const bends = [twelfth, from]
      .filter((y) => (start.y - y) * (end.y - y) < 0)
      .map((y) => ({ x: start.x + ((end.x - start.x) * (y - start.y)) / (end.y - start.y), y }));
    return polyline(at(start), ...(start.y < end.y ? bends : bends.reverse()).map(at), at(end));
  };
  const straight = (start: Point, end: Point): Path => polyline(at(start), at(end));
  return { width, height: inProportion(back) + BENEATH, scale, at, path, line, straight };
};
