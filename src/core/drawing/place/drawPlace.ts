import type { Hand } from '../../document/types';
import { placePath } from '../../geom/placePath';
import type { Path, Point } from '../../geom/types';
import { boardWidthAt } from '../../instrument/boardOf';
import type { Pose } from '../../placement/poseTypes';
import { lastFret, nominalPose, type ReadCase } from '../../placement/reading/readCase';
import type { ReadLine } from '../../placement/reading/types';
import { ordinal } from '../../units/ordinal';
import { handed } from '../handed';
import type { PlotPicture } from '../plots/types';
import { polyline } from '../polyline';
import { TEXT_HEIGHT } from '../textHeights';
import type { Item, Role } from '../types';

/** Millimetres of the picture to one of the instrument. */
const SCALE = 0.42;
/** What a bridge is off by is drawn this many times as large, or it could not be seen. */
const DRAWN_TIMES = 10;
/** Room ahead of the 12th fret and behind the bridge, mm of the instrument. */
const AHEAD = 26;
const BEHIND = 34;
const HEAD = { length: 3.4, half: 1.2 };

/** A line with its number in the picture. */
export interface NumberedLine {
  readonly number: number;
  readonly line: ReadLine;
}

/** What the picture is to show. */
export interface PlaceShown {
  readonly read: ReadCase;
  readonly numbered: readonly NumberedLine[];
  /** The line in hand, which stands out. */
  readonly inHand: ReadLine | null;
  /** Where the bridge sits by its readings; null while they do not tell. */
  readonly sits: Pose | null;
  readonly hand: Hand;
}

const path = (id: string, role: Role, drawn: Path): Item => ({
  kind: 'path',
  id,
  part: 'place',
  role,
  layer: 'lines',
  path: drawn,
});

const words = (
  id: string,
  role: 'note' | 'heading',
  at: Point,
  text: string,
  anchor: 'start' | 'middle' | 'end' = 'middle',
): Item => ({
  kind: 'text',
  id,
  part: 'place',
  role,
  layer: 'text',
  at,
  text,
  height: role === 'note' ? TEXT_HEIGHT.note : TEXT_HEIGHT.label,
  anchor,
  angle: 0,
});

/** The bridge with what it is off by drawn larger. */
const exaggerated = (sits: Pose, nominal: Pose): ((point: Point) => Point) => {
  const angle = (sits.angle - nominal.angle) * DRAWN_TIMES;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [x, y] = [nominal.x + (sits.x - nominal.x) * DRAWN_TIMES, nominal.y + (sits.y - nominal.y) * DRAWN_TIMES];
  return (point) => {
    const [dx, dy] = [point.x - nominal.x, point.y - nominal.y];
    return { x: x + cos * dx - sin * dy, y: y + sin * dx + cos * dy };
  };
};

/** A line with a head at its end. */
const arrow = (id: string, from: Point, to: Point): readonly Item[] => {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < 1) return [];
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const back = { x: to.x - ux * HEAD.length, y: to.y - uy * HEAD.length };
  const wing = (side: number): Point => ({ x: back.x - side * uy * HEAD.half, y: back.y + side * ux * HEAD.half });
  return [
    path(`${id}-shaft`, 'mark', polyline(from, back)),
    path(`${id}-head`, 'plot-mark', { ...polyline(to, wing(1), wing(-1)), closed: true }),
  ];
};

/**
 * The instrument from the 12th fret to the bridge with the lines to read, and the bridge as it sits against where it is
 * meant to, what it is off by drawn ten times as large.
 */
export const drawPlace = ({ read, numbered, inHand, sits, hand }: PlaceShown): PlotPicture => {
  const { board, bridge, slot, strings, saddle, project } = read;
  const { outline } = bridge.footprint;
  const top = board.twelfth - AHEAD;
  const reach = Math.max(...bridge.points.map(({ at }) => Math.abs(at.x)), boardWidthAt(board, board.twelfth) / 2) + 26;
  const deepest = Math.max(...bridge.points.map(({ at }) => at.y), bridge.front + 40);
  const width = 2 * reach * SCALE;
  const height = (deepest + BEHIND - top) * SCALE;
  const place = (point: Point): Point => {
    const on = handed(hand, point);
    return { x: on.x * SCALE + width / 2, y: (Math.max(top, on.y) - top) * SCALE };
  };
  // A point ahead of the picture is brought to its edge along the line that it belongs to.
  const cut = (from: Point, to: Point): Path => {
    const share = from.y < top && to.y > from.y ? (top - from.y) / (to.y - from.y) : 0;
    const start = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
    return polyline(place(start), place(to));
  };
  const mirrored = (drawn: Path): Path => {
    const placed = placePath(drawn, place);
    if (hand === 'right') return placed;
    return {
      ...placed,
      segments: placed.segments.map((each) => (each.kind === 'arc' ? { ...each, clockwise: !each.clockwise } : each)),
    };
  };
  const last = lastFret(read);
  const { bodyJoin } = project.instrument.frets;
  const fret = (id: string, y: number, name: string, half = boardWidthAt(board, y) / 2): readonly Item[] => [
    path(`fret-${id}`, 'slot', polyline(place({ x: -half, y }), place({ x: half, y }))),
    words(`fret-${id}-name`, 'note', { x: width / 2 + half * SCALE + 2, y: place({ x: 0, y }).y }, name, 'start'),
  ];
  const end = deepest + 12;
  const instrument: readonly Item[] = [
    path('centreline', 'centreline', polyline(place({ x: 0, y: top }), place({ x: 0, y: end }))),
    ...([1, -1] as const).map((side) =>
      path(
        `edge-${side}`,
        'board-edge',
        polyline(
          place({ x: (side * boardWidthAt(board, top)) / 2, y: top }),
          place({ x: (side * boardWidthAt(board, end)) / 2, y: end }),
        ),
      ),
    ),
    ...fret('twelfth', board.twelfth, '12th'),
    ...(bodyJoin === 12 ? [] : fret('join', board.bodyJoin, `${ordinal(bodyJoin)}, body join`)),
    ...(project.instrument.frets.count === bodyJoin || project.instrument.frets.count === 12
      ? []
      : fret('last', last.y, `${ordinal(project.instrument.frets.count)}, last`, last.width / 2)),
    ...[strings[0], strings.at(-1)].flatMap((string, index) =>
      string === undefined
        ? []
        : [
            path(
              `string-${index}`,
              'string-line',
              cut({ x: string.nutX, y: 0 }, { x: string.saddleX, y: saddle.centre + saddle.slope * string.saddleX }),
            ),
          ],
    ),
  ];
  const sides = {
    treble: place({ x: reach - 8, y: bridge.front - 14 }),
    bass: place({ x: 8 - reach, y: bridge.front - 14 }),
  };
  const meant: readonly Item[] = [
    path('meant', sits === null ? 'outline' : 'former', mirrored(outline)),
    path('meant-slot', 'slot', mirrored(slot.outline)),
    words('treble', 'heading', sides.treble, 'TREBLE', hand === 'right' ? 'end' : 'start'),
    words('bass', 'heading', sides.bass, 'BASS', hand === 'right' ? 'start' : 'end'),
    words('nut', 'note', { x: width / 2, y: 2.4 }, '↑ NUT SIDE'),
  ];
  const lines: readonly Item[] = numbered.flatMap(({ number, line }) => {
    const held = line.id === inHand?.id;
    const first = line.drawn[0];
    const middle = first === undefined ? { x: 0, y: 0 } : numberPlace(cut(...first), number);
    return [
      ...line.drawn.map(([from, to], index) => path(`${line.id}-${index}`, held ? 'mark' : 'rule-line', cut(from, to))),
      words(`${line.id}-number`, 'heading', middle, `${number}`),
    ];
  });
  const loose: readonly Item[] =
    inHand === null || numbered.some(({ line }) => line.id === inHand.id)
      ? []
      : inHand.drawn.map(([from, to], index) => path(`in-hand-${index}`, 'mark', cut(from, to)));
  const nominal = nominalPose(read);
  const offset = sits === null ? null : exaggerated(sits, nominal);
  const found: readonly Item[] =
    offset === null
      ? []
      : [
          path('sits', 'outline', mirrored(placePath(outline, offset))),
          ...bridge.points
            .filter(({ id }) => id === 'front-treble' || id === 'front-bass')
            .flatMap(({ id, at }) => arrow(`move-${id}`, place(offset(at)), place(at))),
          words(
            'times',
            'note',
            { x: width / 2, y: height - 2.4 },
            `wide: as it sits, drawn ${DRAWN_TIMES} times as far off; arrows: the way to go`,
          ),
        ];
  return {
    width,
    height,
    items: [...instrument, ...meant, ...lines, ...loose, ...found],
    title: 'Where to read, and how the bridge sits',
    summary: `From the 12th fret to the bridge, ${hand} hand, with ${numbered.length} lines to read.${sits === null ? '' : ' The bridge as it sits is drawn with arrows to its place.'}`,
  };
};

/** Where a line's number stands: a third to two thirds along, so that numbers of lines side by side do not meet. */
const numberPlace = ({ start, segments }: Path, number: number): Point => {
  const to = segments.at(-1)?.to ?? start;
  const share = 0.35 + 0.12 * (number % 3);
  const across = Math.abs(to.x - start.x) > Math.abs(to.y - start.y);
  return {
    x: start.x + (to.x - start.x) * share + (across ? 0 : 2.4),
    y: start.y + (to.y - start.y) * share - (across ? 2.4 : 0),
  };
};
