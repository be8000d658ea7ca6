import { checkMessage } from '../../core/checks/checkMessage';
import type { DesignCheck } from '../../core/checks/types';
import type { Issue } from '../../core/result';
import { useLengths } from '../useLengths';

const VERDICTS: Readonly<Record<DesignCheck['verdict'], string>> = { good: 'Good', look: 'Look', wrong: 'Wrong' };
const ORDER: readonly DesignCheck['verdict'][] = ['wrong', 'look', 'good'];

interface ChecksTableProps {
  readonly checks: readonly DesignCheck[];
  /** Why parts could not be computed. */
  readonly issues: readonly Issue[];
}

/** What the design asks the maker to look at, the worst first. */
export function ChecksTable({ checks, issues }: ChecksTableProps) {
  const { withUnit } = useLengths();
  const sorted = [...checks].sort((one, other) => ORDER.indexOf(one.verdict) - ORDER.indexOf(other.verdict));
  return (
    <table className="checks" aria-labelledby="checks-title">
      <thead className="for-readers">
        <tr>
          <th scope="col">Verdict</th>
          <th scope="col">What was found</th>
        </tr>
      </thead>
      <tbody>
        {issues.map(({ path, code, message }) => (
          <tr key={`${path} ${code}`} className="check-wrong">
            <th scope="row">{VERDICTS.wrong}</th>
            <td>{message}</td>
          </tr>
        ))}
        {sorted.map((check) => (
          <tr key={check.id} className={`check-${check.verdict}`}>
            <th scope="row">{VERDICTS[check.verdict]}</th>
            <td>
              {checkMessage(check, withUnit)}
              {check.source !== null && <small>Source: {check.source}</small>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
