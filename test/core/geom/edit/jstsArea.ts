import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import type Geometry from 'jsts/org/locationtech/jts/geom/Geometry.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import IsValidOp from 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js';
import type { Path } from '../../../../src/core/geom/types';
import { chordCorners, extrapolated } from '../../../reference/offsetChords';

/** What jsts finds of a polygon, which its own types leave out. */
interface Shape {
  getArea(): number;
}

const factory = new GeometryFactory();

const shape = (corners: readonly [number, number][]): Shape =>
  factory.createPolygon([...corners, ...corners.slice(0, 1)].map(([x, y]) => new Coordinate(x, y))) as unknown as Shape;

/** The area inside an outline by jsts: of chords within 1 µm and of twice as many, extrapolated. */
export const jstsArea = (path: Path): number =>
  extrapolated(shape(chordCorners(path, 1e-3, 1)).getArea(), shape(chordCorners(path, 1e-3, 2)).getArea());

/** Whether jsts finds an outline, cut into chords, free of crossings. */
export const jstsSimple = (path: Path): boolean => {
  const corners = chordCorners(path, 1e-3, 1).filter(([x, y], index, all) => {
    const [px = Number.NaN, py = Number.NaN] = all.at(index - 1) ?? [];
    return Math.hypot(x - px, y - py) > 1e-9;
  });
  return IsValidOp.isValid(shape(corners) as unknown as Geometry);
};
