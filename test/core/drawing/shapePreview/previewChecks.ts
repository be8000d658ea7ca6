import { expect } from 'vitest';
import type { ShapePreview } from '../../../../src/core/drawing/shapePreview/types';
import type { Item, TextItem } from '../../../../src/core/drawing/types';
import { arcGeometry } from '../../../../src/core/geom/arcGeometry';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import type { Bounds, Point } from '../../../../src/core/geom/types';
import { itemBox, overlap, textBox } from '../../sheets/itemBox';
import { cornersOf } from '../dimensions/readItems';

const textsOf = ({ items }: ShapePreview): readonly TextItem[] =>
  items.filter((item): item is TextItem => item.kind === 'text');

/** Names of the parameters that have a dimension, one for each text. */
export const dimensionsOf = (picture: ShapePreview): readonly string[] => textsOf(picture).map(({ part }) => part);

/** Distance of the two witness lines of a dimension, mm of the bridge; its arrowheads must stand on them. */
export const witnessDistance = ({ items, scale }: ShapePreview, name: string): number => {
  const [[a, b], [c, d]] = [cornersOf(items, `${name}-witness-from`), cornersOf(items, `${name}-witness-to`)];
  if (!a || !b || !c || !d) throw new Error(`The witness lines of ${name} are not lines.`);
  const upright = Math.abs(a.x - b.x) < 1e-9;
  const across = (point: Point): number => (upright ? point.x : point.y);
  for (const [one, other] of [
    [a, b],
    [c, d],
  ] as const)
    expect(across(one), name).toBeCloseTo(across(other), 9);
  for (const [end, line] of [
    ['from', a],
    ['to', c],
  ] as const) {
    const tip = cornersOf(items, `${name}-arrow-${end}`)[1];
    expect(tip && across(tip), name).toBeCloseTo(across(line), 9);
  }
  return Math.abs(across(a) - across(c)) / scale;
};

/** Radius of the outline's arc that a leader points at, square to it, mm of the bridge; 0 at a sharp corner. */
export const leaderRadius = ({ items, scale }: ShapePreview, name: string): number => {
  const [tip, bend] = cornersOf(items, `${name}-line`);
  const outline = items.find(({ id }) => id === 'outline');
  if (!tip || !bend || outline?.kind !== 'path') throw new Error(`No leader of ${name}.`);
  expect(cornersOf(items, `${name}-arrow`)[1]).toEqual(tip);
  const radii: number[] = [];
  let from = outline.path.start;
  for (const segment of outline.path.segments) {
    if (segment.kind === 'arc') {
      const { radius, startAngle, sweep } = arcGeometry(from, segment);
      const { centre } = segment;
      const turn = Math.atan2(tip.y - centre.y, tip.x - centre.x) - startAngle;
      const past = (((turn * Math.sign(sweep)) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
      const onArc = Math.abs(Math.hypot(tip.x - centre.x, tip.y - centre.y) - radius) < 1e-9 && past < Math.abs(sweep);
      const away = (bend.x - tip.x) * (tip.y - centre.y) - (bend.y - tip.y) * (tip.x - centre.x);
      if (onArc && Math.abs(away) < 1e-9) radii.push(radius / scale);
    }
    from = segment.to;
  }
  if (radii.length > 0) return radii[0] ?? Number.NaN;
  const corners = [outline.path.start, ...outline.path.segments.map(({ to }) => to)];
  expect(
    corners.some(({ x, y }) => Math.hypot(x - tip.x, y - tip.y) < 1e-9),
    `${name} points at nothing`,
  ).toBe(true);
  return 0;
};

/** Whether a straight line from a to b runs through a box (Liang and Barsky's clipping). */
const runsThrough = (a: Point, b: Point, box: Bounds): boolean => {
  let [enter, leave] = [0, 1];
  const edges = [
    [a.x - b.x, a.x - box.minX],
    [b.x - a.x, box.maxX - a.x],
    [a.y - b.y, a.y - box.minY],
    [b.y - a.y, box.maxY - a.y],
  ] as const;
  for (const [way, room] of edges) {
    if (way === 0 && room <= 0) return false;
    if (way < 0) enter = Math.max(enter, room / way);
    if (way > 0) leave = Math.min(leave, room / way);
  }
  return enter < leave;
};

const linesOf = (item: Item): readonly (readonly [Point, Point])[] => {
  if (item.kind === 'text') return [];
  const corners = [item.path.start, ...item.path.segments.map(({ to }) => to)];
  return corners.slice(1).map((to, index) => [corners[index] ?? to, to] as const);
};

/** Nothing outside, words upright and apart from one another, from the bridge and from every line of a dimension. */
export const expectLegible = (picture: ShapePreview, which: string): void => {
  const { items, width, height } = picture;
  const faults: string[] = [];
  for (const item of items) {
    const { minX, minY, maxX, maxY } = itemBox(item);
    if (Math.min(minX, minY, width - maxX, height - maxY) < 0) faults.push(`${item.id} reaches out of the picture`);
  }
  const words = textsOf(picture);
  const outline = items.find(({ id }) => id === 'outline');
  const bridge = outline?.kind === 'path' ? pathBounds(outline.path) : { minX: 0, minY: 0, maxX: width, maxY: height };
  for (const [index, word] of words.entries()) {
    const box = textBox(word, true);
    if (word.angle !== 0) faults.push(`${word.id} is turned`);
    if (overlap(box, bridge) > 0) faults.push(`${word.id} lies over the bridge`);
    for (const other of words.slice(index + 1))
      if (overlap(box, textBox(other, true)) > 0) faults.push(`${word.id} lies over ${other.id}`);
    for (const item of items)
      for (const [from, to] of linesOf(item))
        if (item.role === 'dimension' && runsThrough(from, to, box)) faults.push(`${item.id} runs through ${word.id}`);
  }
  expect(faults, which).toEqual([]);
};
