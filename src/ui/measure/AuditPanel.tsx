import { AUDIT_LIMITS, type AuditLimit } from '../../core/audit/auditLimits';
import { AUDIT_FIELDS } from '../../core/document/auditFields';
import { FieldRow } from '../fields/FieldRow';
import { More } from '../fields/More';
import { useLengths } from '../useLengths';
import { AuditAnswer } from './AuditAnswer';
import { LimitRow } from './LimitRow';

/** What is needed for an answer; the rest makes it better. */
const FIRST = ['audit.from', 'audit.treble', 'audit.bass', 'audit.saddleThickness', 'audit.crown', 'audit.slotWidth'];
const LENGTHS = ['land', 'recutMost', 'wallAroundSlot', 'wallAroundPins', 'pinAside'];

/** A bridge that is there: as read, against what the strings want, and the least work that puts it right. */
export function AuditPanel() {
  const rest = AUDIT_FIELDS.filter(({ path }) => !FIRST.includes(path));
  return (
    <>
      {FIRST.map((path) => (
        <FieldRow key={path} path={path} />
      ))}
      <AuditAnswer />
      <More summary="Cents, action, pins and wood around the slot" open>
        {rest.map(({ path }) => (
          <FieldRow key={path} path={path} />
        ))}
      </More>
      <More summary="Limits">
        <AuditLimitRows />
      </More>
    </>
  );
}

function AuditLimitRows() {
  const { bare } = useLengths();
  return Object.entries(AUDIT_LIMITS).map(([name, { value, source }]: [string, AuditLimit]) => (
    <LimitRow key={name} name={name} usual={LENGTHS.includes(name) ? bare(value) : String(value)} source={source} />
  ));
}
