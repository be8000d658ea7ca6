import { RIM_LIMIT } from '../../core/checks/rimCheck';
import { FieldGroup } from '../fields/FieldGroup';
import { FieldRow } from '../fields/FieldRow';
import { useLengths } from '../useLengths';
import { AreasTable } from './AreasTable';

/** What of the footprint is glued, and what the bridge weighs. */
export function FinishFields() {
  const { bare } = useLengths();
  return (
    <FieldGroup title="Finish and wood">
      <FieldRow path="bridge.rim" />
      <FieldRow
        path="limits.rim"
        usual={bare(RIM_LIMIT.value)}
        note={`Usual ${bare(RIM_LIMIT.value)}: ${RIM_LIMIT.source}.`}
      />
      <FieldRow path="bridge.density" />
      <AreasTable />
    </FieldGroup>
  );
}
