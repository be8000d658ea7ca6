import type { SaddlePlace } from '../bridge/types';
import type { Compensation } from '../document/types';
import type { Finding } from './finding';
import type { Mend } from './types';

/** The same figures with no minus before them: a slip of the pen put right. */
const withoutMinus = ({ by, rule, own }: Compensation, id: string): readonly Mend[] => {
  const figure = own[id];
  if (by === 'own' && figure !== undefined && figure < 0)
    return [
      { label: 'Compensation {0}', lengths: [-figure], set: [{ path: `compensation.own.${id}`, value: -figure }] },
    ];
  const set = (['treble', 'bass'] as const)
    .filter((side) => rule[side] < 0)
    .map((side) => ({ path: `compensation.rule.${side}`, value: -rule[side] }));
  return by === 'rule' && set.length > 0 ? [{ label: 'Rule of thumb without the minus', lengths: [], set }] : [];
};

/** A string that breaks ahead of the octave line, or is asked to, is nearly always a slip of the pen: fretted notes would play flat. */
export const compensationSign = (compensation: Compensation, saddle: SaddlePlace): readonly Finding[] =>
  saddle.strings.flatMap(({ id, name, x, line, wanted }): readonly Finding[] => {
    const least = Math.min(line, wanted);
    if (least >= 0) return [];
    const does = line < 0 ? 'breaks' : 'is asked to break';
    return [
      {
        id: `compensation-${id}`,
        verdict: 'look',
        message: `String ${name} ${does} {0} ahead of the octave line: negative compensation.`,
        lengths: [-least],
        source: null,
        at: [{ x, y: saddle.centre + saddle.slope * x }],
        part: `check: string ${name} breaks behind the octave line`,
        tries: withoutMinus(compensation, id),
      },
    ];
  });
