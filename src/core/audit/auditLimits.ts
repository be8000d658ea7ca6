/** One figure with where it comes from. */
export interface AuditLimit {
  readonly value: number;
  readonly source: string;
}

/** When a bridge that is there is good enough, and what wood must stay; every figure is the maker's to change. */
export interface AuditLimits {
  /** Error at the 12th fret, cents, that no one would cut for. */
  readonly leaveCents: AuditLimit;
  /** How far cents read and cents from the geometry may differ, cents. */
  readonly centsAgree: AuditLimit;
  /** Saddle kept ahead of and behind the break point, mm. */
  readonly land: AuditLimit;
  /** Farthest that a slot is filled and cut again before the bridge is moved instead, mm. */
  readonly recutMost: AuditLimit;
  /** Wood between the slot and the front edge, and behind a slot that has no pins, mm. */
  readonly wallAroundSlot: AuditLimit;
  /** Wood between the slot and a pin hole, and between a pin hole and the back edge, mm. */
  readonly wallAroundPins: AuditLimit;
  /** How far to the side a pin may stand from its string, mm. */
  readonly pinAside: AuditLimit;
}

const common = (value: number): AuditLimit => ({ value, source: 'common practice, no source' });

/** Limits to start from. */
export const AUDIT_LIMITS: AuditLimits = {
  leaveCents: common(2),
  centsAgree: common(4),
  land: common(0.3),
  recutMost: common(4),
  wallAroundSlot: common(2),
  wallAroundPins: common(3),
  pinAside: common(1.5),
};
