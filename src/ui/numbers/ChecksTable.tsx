import { lazy, Suspense } from 'react';
import { checkMessage } from '../../core/checks/checkMessage';
import type { DesignCheck } from '../../core/checks/types';
import type { Issue } from '../../core/result';
import { useServices } from '../services';
import { useLengths } from '../useLengths';

const MendButton = lazy(async () => ({ default: (await import('../draw/checks/MendButton')).MendButton }));

const VERDICTS: Readonly<Record<DesignCheck['verdict'], string>> = { good: 'Good', look: 'Look', wrong: 'Wrong' };
const ORDER: readonly DesignCheck['verdict'][] = ['wrong', 'look', 'good'];

interface ChecksTableProps {
  readonly checks: readonly DesignCheck[];
  /** Why parts could not be computed. */
  readonly issues: readonly Issue[];
}

/** What the design asks the maker to look at, the worst first, with where that is and what would mend it. */
export function ChecksTable({ checks, issues }: ChecksTableProps) {
  const { actions } = useServices().store;
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
        {sorted.map((check) => {
          const { id, verdict, source, part = '', at } = check;
          return (
            <tr key={id} className={`check-${verdict}`}>
              <th scope="row">{VERDICTS[verdict]}</th>
              <td>
                {checkMessage(check, withUnit)}
                {verdict !== 'good' && (
                  <div className="check-acts">
                    {at && (
                      <button type="button" title={part} onClick={() => actions.select([part])}>
                        Show
                      </button>
                    )}
                    {check.mend && (
                      <Suspense>
                        <MendButton check={check} />
                      </Suspense>
                    )}
                  </div>
                )}
                {source !== null && <small>Source: {source}</small>}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
