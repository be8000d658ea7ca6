import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import type Geometry from 'jsts/org/locationtech/jts/geom/Geometry.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import IndexedFacetDistance from 'jsts/org/locationtech/jts/operation/distance/IndexedFacetDistance.js';

/** The parts of jsts' geometries used here, which its own types leave out. */
interface Shape {
  getArea(): number;
  getNumGeometries(): number;
  getGeometryN(index: number): { getNumInteriorRing(): number };
  getBoundary(): Geometry;
}

const factory = new GeometryFactory();
const coordinate = ([x, y]: readonly [number, number]) => new Coordinate(x, y);

const polygon = (corners: readonly [number, number][]): unknown =>
  factory.createPolygon([...corners, ...corners.slice(0, 1)].map(coordinate));

/** Area and number of rings, holes included, that jsts finds at a distance from a polygon, each join in so many chords. */
export function jstsOffset(corners: readonly [number, number][], distance: number, chordsInQuarter: number) {
  const parameters = new BufferParameters(chordsInQuarter);
  // Else it smooths what is shallower than a hundredth of the distance.
  parameters.setSimplifyFactor(0);
  const shape = BufferOp.bufferOp(polygon(corners) as Geometry, distance, parameters) as unknown as Shape;
  const area = shape.getArea();
  if (area === 0) return { area, rings: 0 };
  const parts = Array.from({ length: shape.getNumGeometries() }, (_, index) => shape.getGeometryN(index));
  return { area, rings: parts.reduce((sum, part) => sum + 1 + part.getNumInteriorRing(), 0) };
}

/** How far jsts finds a point to be from the sides of a polygon. */
export function jstsDistance(corners: readonly [number, number][]): (point: readonly [number, number]) => number {
  const sides = new IndexedFacetDistance((polygon(corners) as Shape).getBoundary());
  return (point) => sides.distance(factory.createPoint(coordinate(point)) as unknown as Geometry);
}
