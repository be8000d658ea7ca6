import type { SlotPlace } from '../bridge/types';
import type { Slot } from '../document/types';
import { closedSegments } from '../geom/closedSegments';
import { distanceToPath } from '../geom/distanceToPath';
import { pathContains } from '../geom/pathContains';
import { distance } from '../geom/points';
import { segmentPoint } from '../geom/snap/segmentPoint';
import type { Path, Point, Segment } from '../geom/types';
import { type SlotFrame, slotFrame } from './slotFrame';
import type { Wall } from './wallCheck';

/** What lies between the slot and the edge of the bridge: ahead of it, beyond its ends, behind it; null when not asked. */
export interface SlotGaps {
  readonly front: Wall | null;
  readonly ends: Wall | null;
  readonly back: Wall | null;
}

/** A curve is looked at every so many mm, and then more closely about the nearest place found. */
const STEP_MM = 4;
const MOST_STEPS = 40;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
const SECTIONS = 32;

interface Nearest {
  readonly gap: number;
  readonly at: Point;
}

interface Sample extends Nearest {
  readonly start: Point;
  readonly segment: Segment;
  readonly t: number;
  readonly step: number;
}

const stepsOf = (start: Point, { kind, to }: Segment): number => {
  const chord = distance(start, to);
  const least = kind === 'line' || chord < STEP_MM / 2 ? 1 : 3;
  return Math.min(MOST_STEPS, Math.max(least, Math.ceil(chord / STEP_MM)));
};

/** The measure all along an outline, every few millimetres. */
const samplesOf = (outline: Path, measure: (at: Point) => number): readonly Sample[] =>
  closedSegments(outline).flatMap(({ start, segment }) => {
    const steps = stepsOf(start, segment);
    return Array.from({ length: steps }, (_, index): Sample => {
      const t = index / steps;
      const at = segmentPoint(start, segment, t);
      return { gap: measure(at), at, start, segment, t, step: 1 / steps };
    });
  });

/** The least of a measure between two shares of a segment, by golden sections. */
const leastBetween = (
  { start, segment }: Sample,
  from: number,
  to: number,
  measure: (at: Point) => number,
): Nearest => {
  let [low, high] = [from, to];
  for (let section = 0; section < SECTIONS; section += 1) {
    const span = (high - low) * GOLDEN;
    const one = measure(segmentPoint(start, segment, high - span));
    if (one < measure(segmentPoint(start, segment, low + span))) high = low + span;
    else low = high - span;
  }
  const at = segmentPoint(start, segment, (low + high) / 2);
  return { gap: measure(at), at };
};

/** Where the outline comes nearest to the slot, as far as it may be each time: once on a straight or bulging edge. */
const nearestPlaces = (samples: readonly Sample[], measure: (at: Point) => number): readonly Nearest[] =>
  samples.flatMap((sample, index) => {
    const before = samples.at(index - 1) ?? sample;
    const after = samples[(index + 1) % samples.length] ?? sample;
    if (!Number.isFinite(sample.gap) || sample.gap > before.gap || sample.gap >= after.gap) return [];
    const { t, step } = sample;
    const own = leastBetween(sample, Math.max(0, t - step), Math.min(1, t + step), measure);
    const other = t > 0 ? own : leastBetween(before, before.t, 1, measure);
    return [[sample, own, other].reduce((least, each) => (each.gap < least.gap ? each : least))];
  });

/** How far the slot sticks out of the bridge, and which side of it; null when it lies inside. */
const overlaps = (outline: Path, slot: SlotPlace, frame: SlotFrame): { side: keyof SlotGaps; wall: Wall } | null => {
  const { halfLength: x, halfWidth: y } = frame;
  const corners = [
    { x, y: -y },
    { x: -x, y: -y },
    { x, y },
    { x: -x, y },
  ].map(frame.toWorld);
  const beyond = [...corners, slot.ends.treble, slot.ends.bass].map((at) =>
    pathContains(outline, at) ? 0 : distanceToPath(outline, at),
  );
  const most = Math.max(...beyond);
  if (most === 0) return null;
  const out = (...corners: number[]): boolean => corners.every((corner) => (beyond[corner] ?? 0) > 0);
  const side = out(0, 2) || out(1, 3) ? 'ends' : out(0) || out(1) ? 'front' : out(2) || out(3) ? 'back' : 'ends';
  const at = [...corners, slot.ends.treble, slot.ends.bass].filter((_, index) => beyond[index] === most);
  return { side, wall: { wall: -most, at } };
};

/**
 * The least wood on each side of the slot. An open slot has no wood at its ends, and its walls are looked at from twice its
 * width inside of them on, where its strip of wood no longer runs out.
 */
export const slotGaps = (outline: Path, design: Slot, slot: SlotPlace): SlotGaps => {
  const frame = slotFrame(design, slot);
  const open = design.run === 'open';
  const reach = frame.halfLength - 2 * design.width;
  const measure = (point: Point): number => {
    if (!open) return frame.outside(point);
    const local = frame.toLocal(point);
    return Math.abs(local.x) > reach ? Number.POSITIVE_INFINITY : Math.abs(local.y) - frame.halfWidth;
  };
  const best: Partial<Record<keyof SlotGaps, Wall>> = {};
  for (const { gap, at } of nearestPlaces(samplesOf(outline, measure), measure)) {
    const local = frame.toLocal(at);
    const inside = {
      x: Math.min(frame.halfLength, Math.max(-frame.halfLength, local.x)),
      y: Math.min(frame.halfWidth, Math.max(-frame.halfWidth, local.y)),
    };
    const along = Math.abs(local.x - inside.x) > Math.abs(local.y - inside.y);
    const side = along ? 'ends' : local.y < 0 ? 'front' : 'back';
    const nearest = frame.toWorld(inside);
    if (gap < (best[side]?.wall ?? Number.POSITIVE_INFINITY))
      best[side] = { wall: gap, at: [{ x: (at.x + nearest.x) / 2, y: (at.y + nearest.y) / 2 }] };
  }
  const gaps = { front: best.front ?? null, ends: open ? null : (best.ends ?? null), back: best.back ?? null };
  const out = open ? null : overlaps(outline, slot, frame);
  return out === null ? gaps : { ...gaps, [out.side]: out.wall };
};
