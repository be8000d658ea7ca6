import type { TrebleBass } from '../document/types';
import type { AuditLimit } from './auditLimits';
import type { AuditReason, BridgeAuditArguments, RecutPlan, StringAudit } from './types';

const SLACK = 1e-9;

type Code = AuditReason['code'];

const against = (code: Code, value: number, { value: limit, source }: AuditLimit): AuditReason => ({
  code,
  string: null,
  value,
  limit,
  source,
});

/** The string with the largest of these, by size. */
const worstOf = (
  strings: readonly StringAudit[],
  read: (string: StringAudit) => number,
): { readonly string: number; readonly value: number } =>
  strings
    .map((each, string) => ({ string, value: read(each) }))
    .reduce((worst, each) => (Math.abs(each.value) > Math.abs(worst.value) ? each : worst));

/** What stands against leaving the bridge, and then against shaping the saddle; null when nothing does. */
export const errorReasons = (
  strings: readonly StringAudit[],
  { leaveCents }: BridgeAuditArguments['limits'],
): { readonly asIs: AuditReason | null; readonly shaped: AuditReason | null } => {
  const beyond = (code: Code, read: (string: StringAudit) => number): AuditReason | null => {
    const { string, value } = worstOf(strings, read);
    return Math.abs(value) > leaveCents.value + SLACK ? { ...against(code, value, leaveCents), string } : null;
  };
  return {
    asIs: beyond('cents-off', ({ cents }) => cents),
    shaped: beyond('reach-short', ({ leftCents }) => leftCents),
  };
};

/** Less wood than the limit, and less than there is now. */
const tooThin = (wall: number | null, now: TrebleBass | null, limit: AuditLimit): wall is number =>
  wall !== null && now !== null && wall < Math.min(limit.value, now.treble, now.bass) - SLACK;

/** What stands against cutting the slot again in this bridge. */
export const recutObstacles = (args: BridgeAuditArguments, recut: RecutPlan): readonly AuditReason[] => {
  const { recutMost, wallAroundSlot, wallAroundPins } = args.limits;
  const farthest = [recut.shift.treble, recut.shift.bass].reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
  const { wallAhead, wallBehind, pins, pinMove } = recut;
  const reasons: AuditReason[] = [];
  if (Math.abs(farthest) > recutMost.value + SLACK) reasons.push(against('shift-far', farthest, recutMost));
  if (tooThin(wallAhead, args.ahead, wallAroundSlot)) reasons.push(against('wall-ahead', wallAhead, wallAroundSlot));
  if (pins === null && tooThin(wallBehind, args.behind, wallAroundSlot))
    reasons.push(against('wall-behind', wallBehind, wallAroundSlot));
  if (pins === 'no-room' && args.pins)
    reasons.push(against('pins-no-room', args.pins.toBack - args.pins.hole / 2 - pinMove, wallAroundPins));
  return reasons;
};

/** What goes with a new slot in the bridge without standing against it. */
export const recutNotes = (args: BridgeAuditArguments, recut: RecutPlan): readonly AuditReason[] => {
  const { thicknessNeeded, pins, wallBehind } = recut;
  const { thickness } = args.saddle;
  const reasons: AuditReason[] = [];
  if (thickness < thicknessNeeded - SLACK)
    reasons.push({ code: 'saddle-thin', string: null, value: thickness, limit: thicknessNeeded, source: null });
  if (pins === 'redrill' && wallBehind !== null)
    reasons.push(against('pins-redrill', wallBehind, args.limits.wallAroundPins));
  return reasons;
};

/** What wants a look whatever the verdict. */
export const auditNotes = (args: BridgeAuditArguments, strings: readonly StringAudit[]): readonly AuditReason[] => {
  const { saddle, slotWidth, pins, limits } = args;
  const reasons: AuditReason[] = strings.flatMap(({ present, wanted, reading }, string) => [
    ...(present < 0 ? [{ code: 'negative-present' as const, string, value: present, limit: 0, source: null }] : []),
    ...(wanted < 0 ? [{ code: 'negative-wanted' as const, string, value: wanted, limit: 0, source: null }] : []),
    ...(reading && !reading.agrees
      ? [{ ...against('cents-disagree', reading.difference, limits.centsAgree), string }]
      : []),
  ]);
  if (saddle.thickness > slotWidth + SLACK)
    reasons.push({ code: 'saddle-slot', string: null, value: saddle.thickness, limit: slotWidth, source: null });
  if (pins) {
    const aside = (pins.spread - pins.spacing) / 2;
    if (Math.abs(aside) > limits.pinAside.value + SLACK) reasons.push(against('pins-aside', aside, limits.pinAside));
  }
  return reasons;
};
