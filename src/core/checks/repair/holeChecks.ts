import { repairLimit } from '../../repair/repairLimits';
import type { HoleMatch } from '../../repair/types';
import type { Result } from '../../result';
import type { DesignCheck } from '../types';

const SPREAD_SOURCE = 'the nearest replacement had a wider spread: magemusiconline.com, bridge replacement';

const size = (cents: number): string => `${Math.abs(cents).toFixed(1)} cents ${cents < 0 ? 'flat' : 'sharp'}`;

/** Whether the old holes serve the new pins as they are, by a move of the bridge, or only plugged and drilled again. */
export const holeChecks = (match: Result<HoleMatch>, own: Readonly<Record<string, number>>): readonly DesignCheck[] => {
  const limit = repairLimit('holeOff', own);
  const check = (verdict: DesignCheck['verdict'], message: string, lengths: readonly number[]): DesignCheck => ({
    id: 'repair-holes',
    verdict,
    message,
    lengths,
    source: limit.source,
    limit: 'limits.holeOff',
  });
  if (!match.ok)
    return [check('look', `Plug and redrill: ${match.issues.map(({ message }) => message).join(' ')}`, [])];
  const { worstPlaced, fit, spread, costs } = match.value;
  const lengths = [worstPlaced, limit.value, fit.worst];
  const apart = Math.abs(spread.pins - spread.old);
  // Half of a difference in spread falls to either end.
  const spreads: readonly DesignCheck[] =
    apart / 2 <= limit.value
      ? []
      : [
          {
            id: 'repair-spread',
            verdict: 'look',
            message: `The new pins span {0}, the old holes {1}: they are ${spread.pins > spread.old ? 'wider' : 'narrower'} by {2}.`,
            lengths: [spread.pins, spread.old, apart],
            source: SPREAD_SOURCE,
            limit: 'limits.holeOff',
          },
        ];
  if (worstPlaced <= limit.value)
    return [check('good', 'The old holes serve: the farthest lies {0} off its pin.', lengths), ...spreads];
  if (fit.worst > limit.value)
    return [
      check(
        'look',
        'Plug and redrill: wherever the bridge goes, an old hole lies {2} or more off its pin; {1} will do.',
        lengths,
      ),
      ...spreads,
    ];
  const dearest = [...costs].sort((one, other) => Math.abs(other.cents) - Math.abs(one.cents))[0];
  const cost = dearest === undefined ? '' : ` That costs ${dearest.name} ${size(dearest.cents)}.`;
  return [
    check(
      'look',
      `Plug and redrill, or move the bridge: where the strings want it an old hole lies {0} off its pin, moved to the best match {2}.${cost}`,
      lengths,
    ),
    ...spreads,
  ];
};
