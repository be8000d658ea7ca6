import type { StringCompensation } from '../../core/bridge/types';
import { useLengths } from '../useLengths';

const signed = (cents: number): string => {
  const text = Math.abs(cents).toFixed(1);
  return text === '0.0' ? text : `${cents < 0 ? '−' : '+'}${text}`;
};

/** What each string asks for and what a straight saddle gives it. */
export function CompensationTable({ strings }: { readonly strings: readonly StringCompensation[] }) {
  const { bare } = useLengths();
  return (
    <table className="figures" aria-labelledby="compensation-title">
      <thead>
        <tr>
          <th scope="col">String</th>
          <th scope="col">wanted</th>
          <th scope="col">saddle</th>
          <th scope="col">cents off</th>
        </tr>
      </thead>
      <tbody>
        {strings.map(({ id, name, wanted, line, cents }, index) => (
          <tr key={id}>
            <th scope="row">
              {index + 1} {name}
            </th>
            <td>{bare(wanted)}</td>
            <td>{bare(line)}</td>
            <td>{signed(cents)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
