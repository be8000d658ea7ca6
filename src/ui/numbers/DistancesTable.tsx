import type { MeasuredDistance } from '../../core/placement/types';
import { useLengths } from '../useLengths';

/** Rule distances from the instrument's corners to the bridge's, grouped by where the rule starts. */
export function DistancesTable({ distances }: { readonly distances: readonly MeasuredDistance[] }) {
  const { bare } = useLengths();
  const starts = [...new Set(distances.map(({ from }) => from))];
  return (
    <table className="figures" aria-labelledby="distances-title">
      <thead>
        <tr>
          <th scope="col">To</th>
          <th scope="col">distance</th>
        </tr>
      </thead>
      {starts.map((start) => (
        <tbody key={start}>
          <tr className="group">
            <th scope="rowgroup" colSpan={2}>
              From {start}
            </th>
          </tr>
          {distances
            .filter(({ from }) => from === start)
            .map(({ id, to, value }) => (
              <tr key={id}>
                <th scope="row">{to}</th>
                <td>{bare(value)}</td>
              </tr>
            ))}
        </tbody>
      ))}
    </table>
  );
}
