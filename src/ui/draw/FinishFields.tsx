import { REBATE_LIMITS } from '../../core/budget/rebateAdvice';
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
        usual={bare(REBATE_LIMITS.rim.value)}
        note={`Usual ${bare(REBATE_LIMITS.rim.value)}: ${REBATE_LIMITS.rim.source}.`}
      />
      <FieldRow path="bridge.density" />
      <AreasTable />
    </FieldGroup>
  );
}
