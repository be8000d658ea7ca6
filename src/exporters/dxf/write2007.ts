import Drawing, { type HeaderValue } from 'dxf-writer';
import Handle from 'dxf-writer/src/Handle.js';
import type { Point } from '../../core/geom/types';
import { dxfBulge, dxfPlace } from './dxfNumber';
import { dxfText } from './dxfText';
import { LINE_TYPES } from './lineTypes';
import type { DxfDrawing, Entity } from './types';

/** What dxf-writer does and its types leave out: bulges as a third number of a corner, and splines. */
type Writer = Omit<Drawing, 'drawPolyline'> & {
  drawPolyline(corners: readonly (readonly [x: number, y: number, bulge: number])[], closed: boolean): void;
  drawSpline(controls: readonly (readonly [x: number, y: number])[], degree: number, knots: readonly number[]): void;
};

const ANCHORS = { start: 'left', middle: 'center', end: 'right' } as const;

const pair = ({ x, y }: Point): [number, number] => [dxfPlace(x), dxfPlace(y)];

const corner = (point: Point): HeaderValue[] => {
  const [x, y] = pair(point);
  return [
    [10, x],
    [20, y],
    [30, 0],
  ];
};

/** Each knot as often as the degree, and once more at both ends, so that cubics meet end to end as they are. */
const knotsOf = (controls: readonly Point[]): number[] => {
  const cubics = (controls.length - 1) / 3;
  const inner = Array.from({ length: cubics + 1 }, (_, knot) => [knot, knot, knot]).flat();
  return [0, ...inner, cubics];
};

const draw = (drawing: Writer, entity: Entity): void => {
  switch (entity.kind) {
    case 'line':
      drawing.drawLine(...pair(entity.from), ...pair(entity.to));
      return;
    case 'polyline':
      drawing.drawPolyline(
        entity.corners.map(({ at, bulge }): [number, number, number] => [...pair(at), dxfBulge(bulge)]),
        entity.closed,
      );
      return;
    case 'circle':
      drawing.drawCircle(...pair(entity.centre), dxfPlace(entity.radius));
      return;
    case 'spline':
      drawing.drawSpline(entity.controls.map(pair), 3, knotsOf(entity.controls));
      return;
    case 'text':
      drawing.drawText(
        ...pair(entity.at),
        dxfPlace(entity.height),
        dxfPlace(entity.degrees),
        dxfText(entity.text),
        ANCHORS[entity.anchor],
        'middle',
      );
  }
};

/** A DXF of 2007, UTF-8: the only place that knows dxf-writer. The same drawing makes the same text. */
export const write2007 = ({ layers, entities, least, most }: DxfDrawing): string => {
  Handle.seed = 0;
  const drawing = new Drawing() as unknown as Writer;
  drawing.setUnits('Millimeters');
  drawing.header('MEASUREMENT', [[70, 1]]);
  drawing.header('LTSCALE', [[40, 1]]);
  drawing.header('EXTMIN', corner(least));
  drawing.header('EXTMAX', corner(most));
  for (const { name, description, pattern } of LINE_TYPES) drawing.addLineType(name, description, [...pattern]);
  for (const { name, colour, lineType } of layers) drawing.addLayer(name, colour, lineType);
  for (const entity of entities) {
    drawing.setActiveLayer(entity.layer);
    draw(drawing, entity);
  }
  return `${drawing.toDxfString()}\n`;
};
