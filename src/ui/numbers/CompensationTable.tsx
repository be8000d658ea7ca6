import type { StringCompensation } from '../../core/bridge/types';
import { NINETEEN_OF_TWENTY } from '../plusMinus';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { signedCents } from '../withSign';
import { LearnedRow } from './LearnedRow';

interface CompensationTableProps {
  readonly strings: readonly StringCompensation[];
}

/** What each string asks for, what the model says, and what a straight saddle gives. */
export function CompensationTable({ strings }: CompensationTableProps) {
  const { bare, signed } = useLengths();
  const { by, learned } = useStore((state) => state.project.compensation);
  const byModel = by === 'strings' && learned === null;
  const modelText = (model: StringCompensation['model']): string => {
    if (model === null) return '–';
    const doubt = `± ${bare(NINETEEN_OF_TWENTY * model.sigma)}`;
    return byModel ? doubt : `${bare(model.setback)} ${doubt}`;
  };
  return (
    <table className="figures loose" aria-labelledby="compensation-title">
      <thead>
        <tr>
          <th scope="col">String</th>
          <th scope="col">wanted</th>
          <th scope="col" className="wide">
            {byModel ? '±' : 'model ±'}
          </th>
          <th scope="col">saddle</th>
          <th scope="col">miss</th>
          <th scope="col">cents</th>
        </tr>
      </thead>
      <tbody>
        {strings.map(({ id, name, wanted, line, miss, cents, model }, index) => (
          <tr key={id}>
            <th scope="row">
              {index + 1} {name}
            </th>
            <td>{bare(wanted)}</td>
            <td>{modelText(model)}</td>
            <td>{bare(line)}</td>
            <td>{signed(miss)}</td>
            <td>{signedCents(cents)}</td>
          </tr>
        ))}
      </tbody>
      {learned !== null && (
        <tfoot>
          <LearnedRow learned={learned} counts={by === 'strings'} />
        </tfoot>
      )}
    </table>
  );
}
