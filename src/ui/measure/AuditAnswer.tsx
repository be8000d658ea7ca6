import type { StringAudit } from '../../core/audit/types';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { signedCents } from '../withSign';
import { auditReasonWords, auditVerdictWords, recutWords, saddleChangeWords } from './auditWords';
import { useAudit } from './useBridgeAtHand';
import { Verdict } from './Verdict';

const WEIGHT = { leave: 'good', 'shape-saddle': 'good', 'recut-slot': 'look', 'move-bridge': 'wrong' } as const;

/** Leave, shape, recut or move, with its reasons and the work it takes. */
export function AuditAnswer() {
  const audit = useAudit();
  const strings = useStore((state) => state.project.strings);
  const { withUnit } = useLengths();
  if (audit === null) return <p className="hint">Read both outer strings to their break points for an answer.</p>;
  if (!audit.ok) return <p className="field-caution">{audit.issues.map(({ message }) => message).join(' ')}</p>;
  const { verdict, reasons, recut, saddleChange } = audit.value;
  const names = strings.map(({ name }) => name);
  const work = verdict === 'recut-slot' || verdict === 'move-bridge' ? recutWords(recut, withUnit) : [];
  return (
    <>
      <Verdict
        weight={WEIGHT[verdict]}
        words={auditVerdictWords(audit.value)}
        reasons={reasons.map((reason) => ({
          id: `${reason.code} ${reason.string}`,
          words: auditReasonWords(reason, names, withUnit),
          source: reason.source,
        }))}
      >
        {work.map((words) => (
          <p key={words}>{words}</p>
        ))}
        {saddleChange !== null && <p>{saddleChangeWords(saddleChange, withUnit)}</p>}
      </Verdict>
      <AuditTable strings={audit.value.strings} names={names} />
    </>
  );
}

interface AuditTableProps {
  readonly strings: readonly StringAudit[];
  readonly names: readonly string[];
}

/** Present against wanted, and what shaping this saddle would leave. */
function AuditTable({ strings, names }: AuditTableProps) {
  const { bare } = useLengths();
  return (
    <table className="figures loose small-figures" aria-label="Present against wanted">
      <thead>
        <tr>
          <th scope="col">String</th>
          <th scope="col">now</th>
          <th scope="col">wanted</th>
          <th scope="col">cents</th>
          <th scope="col">shaped</th>
        </tr>
      </thead>
      <tbody>
        {strings.map(({ x, present, wanted, cents, leftCents }, index) => (
          <tr key={x}>
            <th scope="row">
              {index + 1} {names[index]}
            </th>
            <td>{bare(present)}</td>
            <td>{bare(wanted)}</td>
            <td>{signedCents(cents)}</td>
            <td>{signedCents(leftCents)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
