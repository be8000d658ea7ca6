import type { BodyPlace } from '../body/types';
import type { BridgePlace } from '../bridge/types';
import { distanceToPath } from '../geom/distanceToPath';
import { pathContains } from '../geom/pathContains';
import { distance } from '../geom/points';
import type { Point } from '../geom/types';

/** Nearer than this a clamp keeps a locating pin from being pulled, mm: our own reasoning, no source. */
const ROOM_TO_PULL = 12;

/** A clamp in its place, instrument frame. */
export interface ClampPlace {
  readonly at: Point;
  /** Whether it stands on the bridge. */
  readonly onBridge: boolean;
  /** Straight from the edge of the soundhole, mm; null without one. */
  readonly reach: number | null;
  /** Beyond the edge of the cutaway: nothing is under it there. */
  readonly inCutaway: boolean;
  /** To the middle of a locating pin that it may keep from being pulled, mm; null when it is free. */
  readonly pin: number | null;
}

/** Each clamp against bridge, soundhole, cutaway and locating pins. clamps: footprint frame, the first tightened first. */
export const clampPlaces = (
  clamps: readonly Point[],
  bridge: BridgePlace,
  body: Pick<BodyPlace, 'soundhole' | 'cutaway'> | null,
): readonly ClampPlace[] =>
  clamps.map(({ x, y }) => {
    const at = { x, y: y + bridge.front };
    const { soundhole = null, cutaway = null } = body ?? {};
    const aside = cutaway?.side === 'treble' ? at.x : 0 - at.x;
    const pin = Math.min(...bridge.locating.map(({ centre }) => distance(centre, at)));
    return {
      at,
      onBridge: pathContains(bridge.footprint.outline, at),
      reach: soundhole === null ? null : pathContains(soundhole, at) ? 0 : distanceToPath(soundhole, at),
      inCutaway: cutaway !== null && at.y < cutaway.end && aside > cutaway.aside,
      pin: pin < ROOM_TO_PULL ? pin : null,
    };
  });
