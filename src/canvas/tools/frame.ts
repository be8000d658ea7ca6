import type { Hand } from '../../core/document/types';
import { handed } from '../../core/drawing/handed';
import type { Point } from '../../core/geom/types';
import { toDrawing, toScreen } from '../camera';
import type { ToolView } from '../handTools';

/** Between the screen and the footprint frame, hand applied on the way. */
export interface Frame {
  /** The footprint's point at a screen point. */
  toFootprint(at: Point): Point;
  /** Where a point of the footprint is seen. */
  onScreen(point: Point): Point;
}

/** The frame of an instrument of this hand whose front edge lies at `front` from the nut datum, through the view as it is now. */
export const frameOf = (view: ToolView, hand: Hand, front: number): Frame => ({
  toFootprint: (at) => {
    const { x, y } = handed(hand, toDrawing(view.camera(), view.size(), at));
    return { x, y: y - front };
  },
  onScreen: ({ x, y }) => toScreen(view.camera(), view.size(), handed(hand, { x, y: y + front })),
});
