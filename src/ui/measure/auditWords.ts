import type { AuditReason, BridgeAudit, RecutPlan } from '../../core/audit/types';
import type { TrebleBass } from '../../core/document/types';

type Show = (mm: number) => string;

const cents = (value: number, sharp = 'sharp', flat = 'flat'): string =>
  `${Math.abs(value).toFixed(1)} cents ${value < 0 ? flat : sharp}`;
const way = (mm: number): string => (mm < 0 ? 'toward the nut' : 'away from the nut');

/** The least work that puts it right, in one sentence. */
export const auditVerdictWords = ({ verdict }: BridgeAudit): string => {
  switch (verdict) {
    case 'leave':
      return 'Leave it: no string is off by enough to cut for.';
    case 'shape-saddle':
      return 'Shape the saddle: every string’s mark lies on it.';
    case 'recut-slot':
      return 'Recut the slot: fill it and cut it anew in this bridge.';
    case 'move-bridge':
      return 'Move the bridge: a new slot will not do in it where it stands.';
  }
};

/** One reason in words, with its figures; names: of the strings, string 1 first. */
export const auditReasonWords = (
  { code, string, value, limit }: AuditReason,
  names: readonly string[],
  show: Show,
): string => {
  const who = string === null ? 'The strings' : `String ${string + 1} (${names[string] ?? ''})`;
  switch (code) {
    case 'cents-off':
      return `${who} is ${cents(value)} at the 12th fret; up to ${limit} no one would cut for.`;
    case 'reach-short':
      return `Shaped as far as this saddle goes, ${who.replace('String', 'string')} stays ${cents(value)}.`;
    case 'negative-present':
      return `${who} breaks ${show(-value)} ahead of the octave line now: read it again.`;
    case 'negative-wanted':
      return `${who} is asked to break ${show(-value)} ahead of the octave line: check the compensation.`;
    case 'cents-disagree':
      return `${who}: the tuner reads ${cents(value, 'sharper', 'flatter')} than the rule says; up to ${limit} would be agreement. Read both again; old strings do this too.`;
    case 'saddle-thin':
      return `On the new line a saddle of ${show(limit)} serves every string; this one is ${show(value)}.`;
    case 'saddle-slot':
      return `The saddle is ${show(value)} thick and its slot ${show(limit)} wide.`;
    case 'shift-far':
      return `The slot would move ${show(Math.abs(value))} ${way(value)}; farther than ${show(limit)} the bridge is moved instead.`;
    case 'wall-ahead':
      return `Ahead of a new slot ${show(value)} of wood would be left; ${show(limit)} is wanted.`;
    case 'wall-behind':
      return `Behind a new slot ${show(value)} of wood would be left; ${show(limit)} is wanted.`;
    case 'pins-redrill':
      return `Between a new slot and the pins ${show(value)} of wood would be left; ${show(limit)} is wanted, so plug and redrill them.`;
    case 'pins-no-room':
      return `The pins cannot follow: ${show(value)} of wood would be left behind them, ${show(limit)} is wanted.`;
    case 'pins-aside':
      return `The pins stand ${show(Math.abs(value))} ${value > 0 ? 'outside' : 'inside'} their strings on each side; ${show(limit)} passes.`;
  }
};

/** What cutting anew, or moving the bridge by as much, would take. */
export const recutWords = ({ shift, turn, pins, pinMove }: RecutPlan, show: Show): readonly string[] => [
  `The middle of the slot moves ${show(Math.abs(shift.treble))} ${way(shift.treble)} at string 1 and ${show(Math.abs(shift.bass))} ${way(shift.bass)} at the last string; it turns by ${((Math.abs(turn) * 180) / Math.PI).toFixed(2)}°.`,
  ...(pins === 'stay' ? ['The pins keep their holes.'] : []),
  ...(pins === 'redrill' ? [`Plug the pin holes and drill them ${show(pinMove)} farther back.`] : []),
  ...(pins === 'no-room' ? ['There is no room behind the pins to drill them anew.'] : []),
];

/** What the action asks of the saddle's height. */
export const saddleChangeWords = ({ treble, bass }: TrebleBass, show: Show): string => {
  const side = (mm: number): string => `${show(Math.abs(mm))} ${mm < 0 ? 'lower' : 'higher'}`;
  return `For the action wanted the saddle must be ${side(treble)} at the treble and ${side(bass)} at the bass.`;
};
