import type { AuditLimit } from '../audit/auditLimits';
import type { Point } from '../geom/types';
import type { DesignCheck } from './types';

/** Wood left between two things, mm, − when they overlap, and where that is. */
export interface Wall {
  readonly wall: number;
  readonly at: readonly Point[];
}

/** Rounding that no wood shows, mm: a wall this little under its limit keeps to it. */
const SAME_MM = 1e-6;

/** The thinnest of several; null of none. */
export const thinnest = <Each extends Wall>(walls: readonly Each[]): Each | null =>
  walls.reduce<Each | null>((least, each) => (least === null || each.wall < least.wall ? each : least), null);

/** The part by which the places of a check are picked: its name as words in a sentence. */
export const checkPart = (name: string): string => `check: ${name.charAt(0).toLowerCase()}${name.slice(1)}`;

/** A check on the wood left between two things: `name` is a whole clause, "Pins clear the slot". wall mm, − when they overlap. */
const wallCheck = (id: string, name: string, wall: number, limit: AuditLimit): DesignCheck => {
  const about = { id, lengths: [Math.abs(wall), limit.value], source: limit.source };
  if (wall < -SAME_MM) return { ...about, verdict: 'wrong', message: `${name}: they overlap by {0}.` };
  if (wall < limit.value - SAME_MM) return { ...about, verdict: 'look', message: `${name} by {0} only; {1} is usual.` };
  return { ...about, verdict: 'good', message: `${name} by {0}.` };
};

/** The same with its place, and the limit by name: "wallAroundPins". */
export const placedWall = (
  id: string,
  name: string,
  { wall, at }: Wall,
  [limitName, limit]: readonly [string, AuditLimit],
): DesignCheck => ({
  ...wallCheck(id, name, wall, limit),
  at,
  part: checkPart(name),
  limit: `limits.${limitName}`,
});
