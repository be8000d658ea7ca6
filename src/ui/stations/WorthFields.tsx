import { helpsMost } from '../../core/intonation/helpsMost';
import { ordinal } from '../../core/units/ordinal';
import { FieldGroup } from '../fields/FieldGroup';
import { More } from '../fields/More';
import { lazyPanel } from '../lazyPanels';
import { NINETEEN_OF_TWENTY } from '../plusMinus';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';

const WorthMore = lazyPanel('WorthMore');
const ModelCard = lazyPanel('ModelCard');

/** How far the model's answer can be trusted, and which figure is worth reading again. */
export function WorthFields() {
  const { models, placement } = useStore((state) => state.derived);
  const { bare, withUnit } = useLengths();
  if (!models.ok || !placement.ok) return null;
  const doubts = models.value.map(({ sigma }) => NINETEEN_OF_TWENTY * sigma);
  const [least, most] = [Math.min(...doubts), Math.max(...doubts)];
  const { centsPerMm } = placement.value;
  const best = helpsMost(models.value);
  return (
    <FieldGroup id="group-worth" title="What it is worth">
      <p className="answer">
        Each string’s mark by the model holds within{' '}
        <strong>
          ± {bare(least)} to {withUnit(most)}
        </strong>
        , {(least * centsPerMm).toFixed(1)} to {(most * centsPerMm).toFixed(1)} cents, in 19 cases of 20.
      </p>
      {best !== null && (
        <p className="answer">
          Measure the {best.name}
          {best.ofString ? ` of the ${ordinal(best.string + 1)} string` : ''} again: that would help most.
        </p>
      )}
      <More summary="Each string, doubts, sampling">
        <WorthMore />
      </More>
      <More summary="What the model rests on">
        <ModelCard />
      </More>
    </FieldGroup>
  );
}
