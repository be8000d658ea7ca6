import { USUAL_DOUBTS } from '../../core/intonation/usualDoubts';
import { NINETEEN_OF_TWENTY } from '../plusMinus';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';

const nameOf = (input: string | undefined): string => USUAL_DOUBTS.find((usual) => usual.input === input)?.name ?? '';

/** ± of every string's mark in mm and cents, and the figure that makes most of it. */
export function WorthTable() {
  const { models, placement } = useStore((state) => state.derived);
  const { bare } = useLengths();
  if (!models.ok || !placement.ok) return null;
  const { centsPerMm } = placement.value;
  return (
    <table className="figures loose small-figures" aria-label="What each mark is worth">
      <thead>
        <tr>
          <th scope="col">String</th>
          <th scope="col">±</th>
          <th scope="col">cents</th>
          <th scope="col">mostly from</th>
        </tr>
      </thead>
      <tbody>
        {models.value.map(({ id, name, sigma, shares }, index) => (
          <tr key={id}>
            <th scope="row">
              {index + 1} {name}
            </th>
            <td>{bare(NINETEEN_OF_TWENTY * sigma)}</td>
            <td>{(NINETEEN_OF_TWENTY * sigma * centsPerMm).toFixed(1)}</td>
            <td>{nameOf(shares[0]?.input)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
