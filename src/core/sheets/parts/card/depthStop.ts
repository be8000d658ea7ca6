import type { BridgePlace } from '../../../bridge/types';
import type { Project } from '../../../document/types';
import { pathBounds } from '../../../geom/pathBounds';
import { sagitta } from '../../../height/sagitta';
import { wingHeight } from '../../../height/sole/wingHeight';

/** How far a drill goes on into the backing block, mm: common practice, no source. */
const INTO_BACKING = 1;

/** What a drill that goes through passes, mm; null for what was not read. */
export interface DepthStop {
  /** At the slot and the pins. */
  readonly bridge: number;
  /** The bridge at its locating pins: under the floor of the cut slot, or in the wings, the thicker of both. */
  readonly atLocating: number | null;
  readonly top: number | null;
  readonly plate: number | null;
  readonly backing: number;
}

/**
 * Bridge at x, `half` being where its end lies: up to where the wing begins the face with its radius, from there the wing.
 * Null where no sole tells of a wing, or x is no place of this bridge.
 */
const thicknessAt = ({ bridge }: Pick<Project, 'bridge'>, half: number, x: number): number | null => {
  const { sole, thickness, slot } = bridge;
  const out = Math.abs(x);
  if (out > Math.abs(half)) return null;
  if (sole === null) return out <= slot.length / 2 ? thickness : null;
  if (out > sole.wing.begin) return wingHeight(sole, half, x);
  return sole.face !== null && sole.face <= out ? null : thickness - sagitta(sole.face, x);
};

/** Everything that the depth stop adds up, from what the project knows. */
export const depthStop = (project: Pick<Project, 'bridge' | 'body' | 'build'>, place: BridgePlace): DepthStop => {
  const { bridge, body, build } = project;
  const { thickness, slot, locating } = bridge;
  const { minX, maxX } = pathBounds(place.footprint.outline);
  const wings = place.locating.map(({ centre: { x } }) => thicknessAt(project, x > 0 ? maxX : minX, x));
  const inWings = wings.includes(null) ? null : Math.max(...wings.map((each) => each ?? 0));
  return {
    bridge: thickness,
    atLocating: { 'slot-ends': thickness - slot.depth, 'outer-pin-holes': thickness, free: inWings }[locating.site],
    top: build?.top ?? null,
    plate: body?.plate?.thickness ?? null,
    backing: INTO_BACKING,
  };
};

/** Where the stop is set through this much of the bridge, mm; null while anything was not read. */
export const stopAt = ({ top, plate, backing }: DepthStop, bridge: number | null): number | null =>
  bridge === null || top === null || plate === null ? null : bridge + top + plate + backing;
