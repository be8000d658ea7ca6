import { DATUM_NAME } from '../../core/placement/datumName';
import type { Placement } from '../../core/placement/types';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';

/** Where everything stands along the centreline, from each datum side by side. */
export function PlacementTable({ placement }: { readonly placement: Placement }) {
  const { bare } = useLengths();
  const datum = useStore((state) => state.project.instrument.nut.datum);
  const square = useStore((state) => state.derived.placement.ok && placement.squareLine[state.device.units]);
  const face = placement.numbers.some(({ fromNutFace }) => fromNutFace !== null);
  const rows =
    square === false
      ? placement.numbers
      : [...placement.numbers, { id: 'square-line', label: 'Square line', ...square }];
  const columns = face ? 3 : 2;
  return (
    <table className="figures" aria-labelledby="placement-title">
      <thead>
        <tr>
          <th scope="col">From</th>
          <th scope="col">{DATUM_NAME[datum].short}</th>
          <th scope="col">12th fret</th>
          {face && <th scope="col">nut face</th>}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, index) => (
          <tr key={row.id} className={index === 0 ? 'first' : undefined}>
            <th scope="row">{row.label}</th>
            <td>{bare(row.fromNut)}</td>
            <td>{bare(row.fromTwelfth)}</td>
            {face && <td>{row.fromNutFace === null ? '' : bare(row.fromNutFace)}</td>}
          </tr>
        ))}
        <Slant placement={placement} columns={columns} />
        <tr>
          <th scope="row">1 mm along costs</th>
          <td colSpan={columns}>{placement.centsPerMm.toFixed(2)} cents</td>
        </tr>
      </tbody>
    </table>
  );
}

/** The slot against square: as an angle, and as a rise over the outer strings and over the slot itself. */
function Slant({ placement, columns }: { readonly placement: Placement; readonly columns: number }) {
  const { bare } = useLengths();
  const { strings } = useStore((state) => state.derived);
  const spread = strings.ok ? (strings.value[0]?.saddleX ?? 0) - (strings.value.at(-1)?.saddleX ?? 0) : 0;
  const slot = useStore((state) => state.project.bridge.slot.length);
  const degrees = ((placement.slant * 180) / Math.PI).toFixed(2);
  return (
    <>
      <tr>
        <th scope="row">Slant</th>
        <td colSpan={columns}>{degrees}°</td>
      </tr>
      <tr>
        <th scope="row">Rise over the strings</th>
        <td colSpan={columns}>
          {bare(Math.tan(placement.slant) * spread)} over {bare(spread)}
        </td>
      </tr>
      <tr>
        <th scope="row">Rise over the slot</th>
        <td colSpan={columns}>
          {bare(Math.sin(placement.slant) * slot)} over {bare(slot)}
        </td>
      </tr>
    </>
  );
}
