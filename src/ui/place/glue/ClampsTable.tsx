import type { Point } from '../../../core/geom/types';
import { useLengths } from '../../useLengths';
import { clampTroubles, clampWhere, reachWords } from './clampWords';
import { useClamps } from './useClamps';

interface ClampsTableProps {
  readonly set: (label: string, clamps: readonly Point[]) => void;
}

/** Every clamp in the order in which it is tightened: where it stands, whether it gets there, earlier and later. */
export function ClampsTable({ set }: ClampsTableProps) {
  const { clamps, places, reach } = useClamps();
  const { withUnit } = useLengths();
  const earlier = (index: number): readonly Point[] =>
    clamps.map((clamp, at) => (at === index - 1 ? clamps[index] : at === index ? clamps[index - 1] : clamp) ?? clamp);
  return (
    <table className="figures loose small-figures clamps">
      <caption>Each clamp, and its reach from the edge of the soundhole</caption>
      <thead>
        <tr>
          <th scope="col">Clamp</th>
          <th scope="col">Reach</th>
          <th scope="col">
            <span className="for-readers">Change</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {places.map((place, index) => {
          const clamp = clamps[index] ?? place.at;
          const troubles = clampTroubles(place, reach, withUnit);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a clamp is its place in the order
            <tr key={index}>
              <th scope="row">
                <strong>{index + 1}</strong> {clampWhere(clamp, withUnit)}
                {troubles.length > 0 && <small className="clamp-trouble">Look: {troubles.join(' ')}</small>}
              </th>
              <td>{reachWords(place, reach, withUnit)}</td>
              <td>
                <button
                  type="button"
                  aria-disabled={index === 0}
                  aria-label={`Tighten clamp ${index + 1} earlier`}
                  onClick={() => {
                    if (index > 0) set(`Clamp ${index + 1} tightened earlier`, earlier(index));
                  }}
                >
                  ↑
                </button>
                <button
                  type="button"
                  aria-disabled={clamps.length === 1}
                  aria-label={`Take out clamp ${index + 1}`}
                  onClick={() => {
                    if (clamps.length > 1)
                      set(
                        `Clamp ${index + 1} taken out`,
                        clamps.filter((_, at) => at !== index),
                      );
                  }}
                >
                  ×
                </button>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
