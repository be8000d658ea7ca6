import { footprintOf } from '../../bridge/footprintOf';
import type { ShapedOutline } from '../../document/outlineTypes';
import { SHAPE_NAMES } from '../../document/shapeNames';
import { SHAPE_PARAMETERS, usualParameters } from '../../document/shapeParameters';
import { validatePath } from '../../geom/validatePath';
import { fail, ok, type Result } from '../../result';
import { moveItem } from '../moveItem';
import type { Item } from '../types';
import { itemBounds } from './itemBounds';
import { type LeaderEdge, measureParameter } from './measureParameter';
import { PICTURE } from './pictureLayout';
import { scaleFootprint } from './scaleFootprint';
import { shelfDimensions } from './shelfDimensions';
import { spanDimensions } from './spanDimensions';
import type { Dimensioned, Measure, ShapePreview } from './types';

const ofKind = <Kind extends Measure['kind']>(all: readonly Dimensioned[], kind: Kind): readonly Dimensioned<Kind>[] =>
  all.flatMap(({ measure, ...words }) =>
    measure.kind === kind ? [{ ...words, measure: measure as Extract<Measure, { kind: Kind }> }] : [],
  );

/**
 * A bridge shape with a dimension for each of its parameters, drawn to scale for a right hand. show: how a length is
 * written. Fails with the footprint's own issues where the parameters do not make a bridge, and with
 * preview.small where a rounding is too small for the scale.
 */
export const shapePreview = (outline: ShapedOutline, show: (mm: number) => string): Result<ShapePreview> => {
  const made = footprintOf(outline);
  if (!made.ok) return made;
  const rows = SHAPE_PARAMETERS[outline.shape];
  const values: Readonly<Record<string, number>> = { ...usualParameters(outline.shape), ...outline.parameters };
  const scale = (2 * PICTURE.half) / (values.length ?? 1);
  const footprint = scaleFootprint(made.value, scale);
  if (!validatePath(footprint.outline).ok)
    return fail('bridge.outline', 'preview.small', 'A rounding of this outline is too small to be drawn here.');
  const parameters = Object.fromEntries(Object.entries(values).map(([name, value]) => [name, value * scale]));
  // Leaders come from the edge that has the belly; spans stand at the plain one.
  const leaders: LeaderEdge = outline.shape === 'belly-nut' ? 'front' : 'back';
  const depth = parameters.full ?? 0;
  const all = rows.map(({ name, label }): Dimensioned => {
    const text = `${label} ${show(values[name] ?? 0)}`;
    return { name, text, measure: measureParameter({ footprint, parameters, leaders }, name) };
  });
  const drawn: readonly Item[] = [
    { kind: 'path', id: 'outline', part: 'outline', role: 'outline', layer: 'bridge', path: footprint.outline },
    ...footprint.faceLines.map(
      (path, index): Item => ({
        kind: 'path',
        id: `face-${index}`,
        part: 'outline',
        role: 'slot',
        layer: 'bridge',
        path,
      }),
    ),
    ...spanDimensions(ofKind(all, 'span'), leaders, depth),
    ...shelfDimensions(ofKind(all, 'radius'), ofKind(all, 'depth'), leaders, depth),
  ];
  const boxes = drawn.map(itemBounds);
  const top = Math.min(...boxes.map(({ minY }) => minY)) - PICTURE.pad;
  const foot = Math.max(...boxes.map(({ maxY }) => maxY)) + PICTURE.pad;
  return ok({
    width: PICTURE.width,
    height: foot - top,
    scale,
    items: drawn.map((item) => moveItem(item, { x: PICTURE.centre, y: -top })),
    title: `${SHAPE_NAMES[outline.shape].replace(',', '')} with its dimensions`,
    summary: `${all.map(({ text }) => text).join('; ')}.`,
  });
};
