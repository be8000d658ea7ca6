import { FieldGroup } from '../fields/FieldGroup';
import { FieldRow } from '../fields/FieldRow';
import { RadioRow } from '../fields/RadioRow';
import { useServices } from '../services';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';

const BY = [
  { value: 'rule', label: 'Rule of thumb' },
  { value: 'own', label: 'Own figures' },
] as const;

/** How far behind the octave line the strings are to break over the saddle. */
export function CompensationFields() {
  const { actions } = useServices().store;
  const { compensation, strings } = useStore((state) => state.project);
  const { saddle } = useStore((state) => state.derived);
  const { withUnit } = useLengths();
  const ruled = (id: string): string | undefined => {
    const row = saddle.ok ? saddle.value.strings.find((string) => string.id === id) : undefined;
    return row === undefined || id in compensation.own
      ? undefined
      : `No own figure: the rule's ${withUnit(row.wanted)}.`;
  };
  return (
    <FieldGroup title="Compensation" hint="How far behind the octave line (twice the 12th fret) the strings break.">
      <RadioRow
        label="Compensation by"
        value={compensation.by}
        choices={BY}
        choose={(by) => actions.setField('compensation.by', by)}
      />
      {compensation.by === 'own' &&
        strings.map(({ id }) => <FieldRow key={id} path={`compensation.own.${id}`} note={ruled(id)} />)}
      {compensation.by === 'rule' && (
        <>
          <FieldRow path="compensation.rule.treble" />
          <FieldRow path="compensation.rule.bass" />
          <FieldRow path="compensation.rule.reach" />
          <FieldRow path="compensation.rule.source" />
        </>
      )}
    </FieldGroup>
  );
}
