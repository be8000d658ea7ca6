import { FieldGroup } from '../fields/FieldGroup';
import { FieldRow } from '../fields/FieldRow';
import { More } from '../fields/More';
import { lazyPanel } from '../lazyPanels';
import { poundsForce } from '../poundsForce';
import { useStore } from '../useStore';
import { StringSetSelect } from './StringSetSelect';

const StringsMore = lazyPanel('StringsMore');

/** Which strings, and how they are spread. */
export function StringsFields() {
  const strings = useStore((state) => state.project.strings);
  const models = useStore((state) => state.derived.models);
  const paired = strings.some(({ course }, index) => course === strings[index - 1]?.course);
  const total = models.ok ? models.value.reduce((sum, { tension }) => sum + tension, 0) : null;
  return (
    <FieldGroup id="group-strings" title="Strings">
      <StringSetSelect />
      {total !== null && (
        <p className="answer">
          {strings.length} strings pull{' '}
          <strong>
            {total.toFixed(0)} N, {poundsForce(total).toFixed(0)} lb
          </strong>{' '}
          in all.
        </p>
      )}
      <More summary="Each string: pitch, gauge, pull, core">
        <StringsMore />
      </More>
      <FieldRow path="instrument.spread.own" />
      <FieldRow path="instrument.spread.from" />
      <FieldRow path="instrument.margins.treble" />
      <FieldRow path="instrument.margins.bass" />
      <FieldRow path="instrument.gapRule" />
      {paired && <FieldRow path="instrument.pairGap" />}
    </FieldGroup>
  );
}
