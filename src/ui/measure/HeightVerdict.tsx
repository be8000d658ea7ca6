import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { heightReasonWords, heightVerdictWords } from './heightWords';
import { useHeight } from './useBridgeAtHand';
import { Verdict } from './Verdict';

const WEIGHT = { go: 'good', 'change-bridge': 'look', 'set-neck-first': 'wrong' } as const;

/** Go, another bridge, or the neck first, and why. */
export function HeightVerdict() {
  const height = useHeight();
  const present = useStore((state) => state.project.bridge.thickness);
  const { withUnit } = useLengths();
  if (height === null) return null;
  if (!height.ok) return <Verdict weight="wrong" words={height.issues.map(({ message }) => message).join(' ')} />;
  const chain = height.value;
  const { proud, pickup } = chain;
  return (
    <Verdict
      weight={WEIGHT[chain.verdict]}
      words={heightVerdictWords(chain, present, withUnit)}
      reasons={chain.reasons.map((reason) => ({
        id: reason.code,
        words: heightReasonWords(reason, withUnit),
        source: reason.source,
      }))}
    >
      <p>
        The saddle stands {withUnit(proud.least)} to {withUnit(proud.most)} over the bridge; the blank must be{' '}
        {withUnit(chain.blankNeeded)} high, with {withUnit(chain.woodUnder)} of wood left under the slot.
      </p>
      {pickup.lift > 0 && (
        <p>
          Take the pickup’s {withUnit(pickup.lift)} off the foot of the saddle, or the action rises by{' '}
          {withUnit(pickup.actionRise)}.
        </p>
      )}
    </Verdict>
  );
}
