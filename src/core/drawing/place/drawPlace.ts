import type { Hand } from '../../document/types';
import { placePath } from '../../geom/placePath';
import type { Point } from '../../geom/types';
import type { Pose } from '../../placement/poseTypes';
import { nominalPose, type ReadCase } from '../../placement/reading/readCase';
import type { ReadLine } from '../../placement/reading/types';
import { formatLength, type LengthStyle } from '../../units/formatLength';
import type { PlotPicture } from '../plots/types';
import type { Item } from '../types';
import { drawInstrument } from './drawInstrument';
import { drawReadLines, type NumberedLine, type Spot } from './drawReadLines';
import { placeArrow, placePathItem, placeWords } from './placeItems';
import { type PlaceMap, placeMap } from './placeMap';

/** What a bridge is off by is drawn this many times as large, or it could not be seen: the most that leaves it in the picture. */
const TIMES = [20, 10, 5, 2, 1];
const MOST_DRAWN = 6;
/** Less than this has no arrow, mm of the instrument. */
const HARDLY = 0.05;

/** What the picture is to show. */
export interface PlaceShown {
  readonly read: ReadCase;
  readonly numbered: readonly NumberedLine[];
  /** The line in hand, which stands out. */
  readonly inHand: ReadLine | null;
  /** Where the bridge sits by its readings; null while they do not tell. */
  readonly sits: Pose | null;
  readonly hand: Hand;
  readonly style: LengthStyle;
}

/** The picture, and where a press on it leads. */
export interface PlacePicture {
  readonly plot: PlotPicture;
  readonly spots: readonly Spot[];
}

/** The bridge with what it is off by drawn larger. */
const enlarged = (sits: Pose, nominal: Pose, times: number): ((point: Point) => Point) => {
  const angle = (sits.angle - nominal.angle) * times;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [x, y] = [nominal.x + (sits.x - nominal.x) * times, nominal.y + (sits.y - nominal.y) * times];
  return (point) => {
    const [dx, dy] = [point.x - nominal.x, point.y - nominal.y];
    return { x: x + cos * dx - sin * dy, y: y + sin * dx + cos * dy };
  };
};

/** The bridge as it sits, with arrows from its front corners to where they belong and how far that is. */
const drawFound = (read: ReadCase, map: PlaceMap, sits: Pose, style: LengthStyle): readonly Item[] => {
  const nominal = nominalPose(read);
  const corners = read.bridge.points.filter(({ id }) => id === 'front-treble' || id === 'front-bass');
  const off = (times: number) => {
    const place = enlarged(sits, nominal, times);
    return corners.map(({ at }) => ({ at, from: place(at) }));
  };
  const far = (at: Point, from: Point): number => Math.hypot(at.x - from.x, at.y - from.y);
  const worst = Math.max(...off(1).map(({ at, from }) => far(at, from)), 0);
  const times = TIMES.find((each) => each * worst * map.scale <= MOST_DRAWN) ?? 1;
  return [
    placePathItem(
      'sits',
      'outline',
      map.path(placePath(read.bridge.footprint.outline, enlarged(sits, nominal, times))),
    ),
    ...off(times).flatMap(({ at, from }, index): readonly Item[] => {
      const moved = far(at, from) / times;
      if (moved < HARDLY) return [];
      const [tail, head] = [map.at(from), map.at(at)];
      const outward = tail.x < map.width / 2 ? -1 : 1;
      return [
        ...placeArrow(`move-${index}`, tail, head),
        placeWords(
          `move-${index}-by`,
          'heading',
          { x: Math.min(Math.max(tail.x, 5), map.width - 5), y: Math.max(tail.y, head.y) + 3.4 },
          formatLength(moved, style),
          outward < 0 ? 'start' : 'end',
        ),
      ];
    }),
    placeWords(
      'times',
      'note',
      { x: map.width / 2, y: map.height - 2.8 },
      `as it sits${times === 1 ? '' : `, drawn ${times} times as far off`}; arrows: the way to go`,
    ),
  ];
};

/**
 * The instrument from nut to bridge, its neck shortened, with the lines to read by their numbers, and the bridge as it sits
 * against where it is meant to, what it is off by drawn larger.
 */
export const drawPlace = ({ read, numbered, inHand, sits, hand, style }: PlaceShown): PlacePicture => {
  const map = placeMap(read, hand);
  const { bridge, slot } = read;
  const side = (x: number): Point => ({ x: map.at({ x, y: 0 }).x, y: map.height - 8.2 });
  const half = Math.max(...bridge.points.map(({ at }) => Math.abs(at.x)));
  const lines = drawReadLines(map, numbered, inHand, inHand === null ? '' : formatLength(inHand.expected, style));
  return {
    plot: {
      width: map.width,
      height: map.height,
      items: [
        ...drawInstrument(read, map),
        placePathItem('meant', sits === null ? 'outline' : 'former', map.path(bridge.footprint.outline)),
        placePathItem('meant-slot', 'slot', map.path(slot.outline)),
        ...bridge.pins.map(({ id, centre }) =>
          placePathItem(
            `${id}-cross`,
            'slot',
            map.line({ x: centre.x - 2, y: centre.y }, { x: centre.x + 2, y: centre.y }),
          ),
        ),
        placeWords('treble', 'heading', side(half), 'TREBLE', hand === 'right' ? 'end' : 'start'),
        placeWords('bass', 'heading', side(-half), 'BASS', hand === 'right' ? 'start' : 'end'),
        placeWords('nut', 'note', { x: map.width / 2, y: 2.6 }, '↑ NUT SIDE'),
        ...(sits === null ? [] : drawFound(read, map, sits, style)),
        ...lines.items,
      ],
      title: 'Where to read, and how the bridge sits',
      summary: `From the nut to the bridge, ${hand} hand, with ${numbered.length} lines to read.${sits === null ? '' : ' The bridge as it sits is drawn with arrows to its place.'}`,
    },
    spots: lines.spots,
  };
};
