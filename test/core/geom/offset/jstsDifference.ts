import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import type Geometry from 'jsts/org/locationtech/jts/geom/Geometry.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';

const factory = new GeometryFactory();

const polygon = (corners: readonly (readonly [number, number])[]): Geometry =>
  factory.createPolygon(
    [...corners, ...corners.slice(0, 1)].map(([x, y]) => new Coordinate(x, y)),
  ) as unknown as Geometry;

/** The area that jsts finds inside one polygon and outside of another. */
export const jstsDifference = (
  one: readonly (readonly [number, number])[],
  other: readonly (readonly [number, number])[],
): number => (OverlayOp.difference(polygon(one), polygon(other)) as unknown as { getArea(): number }).getArea();
