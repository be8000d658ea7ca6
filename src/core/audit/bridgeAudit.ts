import { failed, ok, type Result } from '../result';
import { auditProblems } from './auditProblems';
import { auditNotes, errorReasons, recutNotes, recutObstacles } from './auditReasons';
import { recutPlan } from './recutPlan';
import { presentLines, stringAudits } from './stringAudits';
import type { AuditReason, BridgeAudit, BridgeAuditArguments } from './types';

/** Action is read half way along the string, so the saddle moves by twice its change and a little more behind the octave. */
const saddleChange = (args: BridgeAuditArguments, treble: number, bass: number): BridgeAudit['saddleChange'] => {
  const { action, scaleLength } = args;
  if (!action) return null;
  const ratio = (present: number): number => (scaleLength + present) / (scaleLength / 2);
  return {
    treble: (action.wanted.treble - action.present.treble) * ratio(treble),
    bass: (action.wanted.bass - action.present.bass) * ratio(bass),
  };
};

/**
 * A bridge that is there against what its strings want: the compensation that readings from the nut datum or the 12th fret
 * show, the difference in mm and cents, and the least work that puts it right. Leave it when no string is off by more than
 * the limit; shape the saddle when it is thick enough to bring every string within the limit; else fill the slot and cut it
 * again, if it stays near enough and leaves wood around it and the pins can follow; else move the bridge. The verdict goes
 * by the rule readings and `wanted`; where cents were read as well, the reasons say where the two do not agree.
 * Readings along the centreline; along an outer string of a guitar they come out less than 0.02 mm longer.
 *
 * Codes: audit.scale, audit.nutOffset, audit.strings, audit.place, audit.wanted, audit.distance, audit.cents, audit.saddle,
 * audit.crown, audit.slot, audit.pins, audit.room, audit.action, audit.limits; as fitSaddleLine.
 */
export const bridgeAudit = (args: BridgeAuditArguments): Result<BridgeAudit> => {
  const wrong = auditProblems(args);
  if (wrong.length > 0) return failed(wrong);
  const lines = presentLines(args);
  const plan = recutPlan(args, lines);
  if (!plan.ok) return plan;
  const recut = plan.value;
  const strings = stringAudits(args, lines);
  const { asIs, shaped } = errorReasons(strings, args.limits);
  const notes = auditNotes(args, strings);
  const answer = (verdict: BridgeAudit['verdict'], reasons: readonly (AuditReason | null)[]): Result<BridgeAudit> =>
    ok({
      strings,
      verdict,
      reasons: [...reasons.filter((reason) => reason !== null), ...notes],
      recut,
      saddleChange: saddleChange(args, strings[0]?.present ?? 0, strings.at(-1)?.present ?? 0),
    });
  if (!asIs) return answer('leave', []);
  if (!shaped) return answer('shape-saddle', [asIs]);
  const obstacles = recutObstacles(args, recut);
  if (obstacles.length === 0) return answer('recut-slot', [asIs, shaped, ...recutNotes(args, recut)]);
  return answer('move-bridge', [asIs, shaped, ...obstacles]);
};
