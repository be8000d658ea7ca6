import type { AuditLimit } from '../audit/auditLimits';

/** Limits of the checks of a repair, to start from. */
export const REPAIR_LIMITS = {
  /** How far an old hole may lie off its pin, mm. */
  holeOff: { value: 0.25, source: 'our own choice of tolerance, no source' },
  /** Old footprint left showing, mm². */
  showing: { value: 1, source: 'our own choice, no source: what a touch of finish hides' },
} as const satisfies Readonly<Record<string, AuditLimit>>;

/** One of them, or the maker's own in its place. */
export const repairLimit = (name: keyof typeof REPAIR_LIMITS, own: Readonly<Record<string, number>>): AuditLimit => {
  const value = own[name];
  return value === undefined ? REPAIR_LIMITS[name] : { value, source: 'set by the maker' };
};
