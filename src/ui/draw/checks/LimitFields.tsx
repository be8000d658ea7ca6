import { AUDIT_LIMITS } from '../../../core/audit/auditLimits';
import { WALL_LIMITS } from '../../../core/checks/wallLimits';
import { FieldGroup } from '../../fields/FieldGroup';
import { FieldRow } from '../../fields/FieldRow';
import { More } from '../../fields/More';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';

const { wallAroundSlot, wallAroundPins, pinAside, land } = AUDIT_LIMITS;
const LIMITS = Object.entries({ wallAroundSlot, wallAroundPins, pinAside, land, ...WALL_LIMITS });

/** What the design checks hold the bridge against. */
export function LimitFields() {
  const { bare } = useLengths();
  const checks = useStore((state) => state.around?.checks) ?? [];
  const notKept = (path: string): string => {
    const parts = checks.flatMap(({ verdict, limit, part }) =>
      verdict !== 'good' && limit === path ? (part ?? []) : [],
    );
    return parts.length === 0 ? '' : ` Not kept now: ${parts.join('; ')}.`;
  };
  return (
    <FieldGroup title="Design checks">
      <More summary="Limits of the checks">
        {LIMITS.map(([name, { value, source }]) => (
          <FieldRow
            key={name}
            path={`limits.${name}`}
            usual={bare(value)}
            note={`Usual ${bare(value)}: ${source}.${notKept(`limits.${name}`)}`}
          />
        ))}
      </More>
    </FieldGroup>
  );
}
