import type { SaddleHeight } from '../../core/height/types';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';

/** Every string at the saddle: over the fret tops, over the bridge, in the slot, and how it bends behind. */
export function HeightTable({ strings }: { readonly strings: readonly SaddleHeight[] }) {
  const names = useStore((state) => state.project.strings);
  const { bare } = useLengths();
  return (
    <table className="figures loose small-figures" aria-label="Heights by string">
      <thead>
        <tr>
          <th scope="col">String</th>
          <th scope="col">over frets</th>
          <th scope="col">proud</th>
          <th scope="col">in slot</th>
          <th scope="col">break</th>
        </tr>
      </thead>
      <tbody>
        {strings.map(({ height, proud, share, breakDeg }, index) => (
          <tr key={names[index]?.id ?? index}>
            <th scope="row">
              {index + 1} {names[index]?.name}
            </th>
            <td>{bare(height)}</td>
            <td>{bare(proud)}</td>
            <td>{Math.round(share * 100)} %</td>
            <td>{breakDeg === null ? '' : `${breakDeg.toFixed(0)}°`}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
