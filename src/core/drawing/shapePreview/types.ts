import type { Point } from '../../geom/types';
import type { PlotPicture } from '../plots/types';

/** A bridge shape with a dimension for each of its parameters; an item's part is the name of the parameter, or "outline". */
export interface ShapePreview extends PlotPicture {
  /** Millimetres of the picture for one of the bridge. */
  readonly scale: number;
}

/** What a parameter of a shape measures, mm; spans from left to right, depths from the nut to the tail. */
export type Measure =
  | { readonly kind: 'span'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'depth'; readonly from: Point; readonly to: Point }
  | {
      readonly kind: 'radius';
      readonly centre: Point;
      readonly radius: number;
      /** From the centre to the middle of the arc, radians, + clockwise as seen. */
      readonly angle: number;
      /** The wood is outside of the arc. */
      readonly hollow: boolean;
    };

/** A parameter with what is written beside its dimension. */
export interface Dimensioned<Kind extends Measure['kind'] = Measure['kind']> {
  /** The parameter's name: "wing". */
  readonly name: string;
  readonly text: string;
  readonly measure: Extract<Measure, { kind: Kind }>;
}
