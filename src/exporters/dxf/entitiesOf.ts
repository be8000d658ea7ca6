import type { Item, TextItem } from '../../core/drawing/types';
import { arcGeometry } from '../../core/geom/arcGeometry';
import { closedSegments, type StartedSegment } from '../../core/geom/closedSegments';
import { distance } from '../../core/geom/points';
import { COINCIDENT_MM } from '../../core/geom/tolerances';
import type { Path, Point } from '../../core/geom/types';
import { CAPITAL_HEIGHT } from '../../core/text/capitalHeight';
import { circleOf } from '../circleOf';
import { layerOf } from './layerOf';
import type { Corner, Entity } from './types';

/** A DXF has y up. */
const up = ({ x, y }: Point): Point => ({ x, y: 0 - y });

const goesSomewhere = ({ start, segment }: StartedSegment): boolean =>
  segment.kind !== 'line' || distance(start, segment.to) > COINCIDENT_MM;

/** Clockwise as seen stays so when y is turned up, where a bulge counts the other way. */
const cornerOf = ({ start, segment }: StartedSegment): Corner => ({
  at: up(start),
  bulge: segment.kind === 'arc' ? 0 - Math.tan(arcGeometry(start, segment).sweep / 4) : 0,
});

const isCubic = ({ segment }: StartedSegment): boolean => segment.kind === 'cubic';

/** Runs of cubics and runs of lines and arcs, in turn; on a closed path none is cut in two by the start. */
const runsOf = (pieces: readonly StartedSegment[], closed: boolean): readonly (readonly StartedSegment[])[] => {
  const change = pieces.findIndex((piece, at) => at > 0 && isCubic(piece) !== isCubic(pieces[at - 1] ?? piece));
  const turned = closed && change > 0 ? [...pieces.slice(change), ...pieces.slice(0, change)] : pieces;
  const runs: StartedSegment[][] = [];
  for (const piece of turned) {
    const last = runs.at(-1);
    if (last?.[0] !== undefined && isCubic(last[0]) === isCubic(piece)) last.push(piece);
    else runs.push([piece]);
  }
  return runs;
};

const runEntity = (run: readonly StartedSegment[], closed: boolean, layer: string): readonly Entity[] => {
  const [first] = run;
  const end = run.at(-1)?.segment.to;
  if (first === undefined || end === undefined) return [];
  if (isCubic(first)) {
    const controls = run.flatMap(({ segment }) =>
      segment.kind === 'cubic' ? [segment.c1, segment.c2, segment.to].map(up) : [],
    );
    return [{ layer, kind: 'spline', controls: [up(first.start), ...controls] }];
  }
  if (run.length === 1 && first.segment.kind === 'line')
    return [{ layer, kind: 'line', from: up(first.start), to: up(end) }];
  const corners = run.map(cornerOf);
  return [{ layer, kind: 'polyline', corners: closed ? corners : [...corners, { at: up(end), bulge: 0 }], closed }];
};

/** A path as one entity; as several that meet end to end where curves and arcs take turns. */
const pathEntities = (path: Path, layer: string): readonly Entity[] => {
  const circle = circleOf(path);
  if (circle !== null) return [{ layer, kind: 'circle', centre: up(circle.centre), radius: circle.radius }];
  const pieces = closedSegments(path).filter(goesSomewhere);
  const runs = runsOf(pieces, path.closed);
  return runs.flatMap((run) => runEntity(run, path.closed && runs.length === 1, layer));
};

const textEntity = ({ at, text, height, anchor, angle }: TextItem, layer: string): Entity => ({
  layer,
  kind: 'text',
  at: up(at),
  text,
  height: height * CAPITAL_HEIGHT,
  anchor,
  degrees: 0 - (angle * 180) / Math.PI,
});

/** An item as the entities of a DXF. @throws RangeError when a path is not valid */
export const entitiesOf = (item: Item): readonly Entity[] => {
  const { name } = layerOf(item);
  if (item.kind === 'path') return pathEntities(item.path, name);
  return item.text.trim() === '' ? [] : [textEntity(item, name)];
};
