import type { StringCompensation } from '../../core/bridge/types';
import { useLengths } from '../useLengths';
import { signedCents } from '../withSign';

/** Where in the thickness of the saddle each string must break, and what is left once it is shaped as far as it goes. */
export function ShapingTable({ strings }: { readonly strings: readonly StringCompensation[] }) {
  const { bare } = useLengths();
  return (
    <table className="figures" aria-labelledby="shaping-title">
      <thead>
        <tr>
          <th scope="col">String</th>
          <th scope="col">from front</th>
          <th scope="col">shaped</th>
          <th scope="col">cents left</th>
        </tr>
      </thead>
      <tbody>
        {strings.map(({ id, name, crown, centsLeft }, index) => (
          <tr key={id}>
            <th scope="row">
              {index + 1} {name}
            </th>
            <td>{bare(crown.fromFace)}</td>
            <td>{crown.reached ? 'to mark' : 'short'}</td>
            <td>{signedCents(centsLeft)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
