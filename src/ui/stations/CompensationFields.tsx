import { Suspense } from 'react';
import { COMPENSATION_FIELDS } from '../../core/document/compensationFields';
import { FieldGroup } from '../fields/FieldGroup';
import { FieldRow } from '../fields/FieldRow';
import { More } from '../fields/More';
import { RadioRow } from '../fields/RadioRow';
import { lazyPanel } from '../lazyPanels';
import { useServices } from '../services';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { RuleAndModel } from './RuleAndModel';

const FitFields = lazyPanel('FitFields');
const NutSetback = lazyPanel('NutSetback');

const BY_FIELD = COMPENSATION_FIELDS.find(({ path }) => path === 'compensation.by') ?? null;

const BY = [
  { value: 'rule', label: 'Rule of thumb' },
  { value: 'strings', label: 'Strings' },
  { value: 'own', label: 'Own figures' },
] as const;

/** How far behind the octave line the strings are to break over the saddle. */
export function CompensationFields() {
  const { actions } = useServices().store;
  const { by, fit } = useStore((state) => state.project.compensation);
  return (
    <FieldGroup
      id="group-compensation"
      title="Compensation"
      hint="How far behind the octave line (twice the 12th fret) the strings break."
    >
      <RadioRow
        label="Compensation by"
        value={by}
        choices={BY}
        choose={(chosen) => actions.setField(BY_FIELD, chosen)}
      />
      {by === 'rule' && (
        <>
          <FieldRow path="compensation.rule.treble" />
          <FieldRow path="compensation.rule.bass" />
          <FieldRow path="compensation.rule.reach" />
          <FieldRow path="compensation.rule.source" />
        </>
      )}
      {by === 'own' && <OwnFigures />}
      <RuleAndModel />
      {fit.nut === 'moves' && fit.match === 'range' && (
        <Suspense fallback={null}>
          <NutSetback />
        </Suspense>
      )}
      <More summary="Frets, saddle line, slotted bridge, finger">
        <FitFields />
      </More>
    </FieldGroup>
  );
}

/** A figure for each string; an empty one takes the rule's. */
function OwnFigures() {
  const { compensation, strings } = useStore((state) => state.project);
  const saddle = useStore((state) => state.derived.saddle);
  const { bare, withUnit } = useLengths();
  return strings.map(({ id }) => {
    const row = saddle.ok ? saddle.value.strings.find((string) => string.id === id) : undefined;
    const ruled = row !== undefined && !(id in compensation.own);
    return (
      <FieldRow
        key={id}
        path={`compensation.own.${id}`}
        usual={ruled ? bare(row.wanted) : undefined}
        note={ruled ? `Empty: the rule’s ${withUnit(row.wanted)}.` : undefined}
      />
    );
  });
}
