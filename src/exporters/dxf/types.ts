import type { Point } from '../../core/geom/types';

/** A corner of a polyline. bulge: tan of a quarter of the turn of the arc to the next corner, + counter-clockwise; 0 straight. */
export interface Corner {
  readonly at: Point;
  readonly bulge: number;
}

/** What stands in a DXF, mm, y up. */
export type Entity = { readonly layer: string } & (
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'polyline'; readonly corners: readonly Corner[]; readonly closed: boolean }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number }
  /** Cubics end to end: each but the first begins where the one before it ends, which is told once. */
  | { readonly kind: 'spline'; readonly controls: readonly Point[] }
  /** at: midway up the capitals. height: of the capitals. degrees: + counter-clockwise. */
  | {
      readonly kind: 'text';
      readonly at: Point;
      readonly text: string;
      readonly height: number;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly degrees: number;
    }
);

/** A layer with the name of its line type and its colour, by the colour numbers of DXF. */
export interface DxfLayer {
  readonly name: string;
  readonly lineType: string;
  readonly colour: number;
}

/** A drawing as it goes to a writer. */
export interface DxfDrawing {
  readonly layers: readonly DxfLayer[];
  readonly entities: readonly Entity[];
  /** Lower left and upper right corner of what is drawn. */
  readonly least: Point;
  readonly most: Point;
}
