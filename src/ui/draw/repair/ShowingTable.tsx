import type { RepairAreas } from '../../../core/derive/deriveRepairAreas';
import { MM_PER_INCH } from '../../../core/units/mmPerInch';
import { useStore } from '../../useStore';

const ROWS: readonly { readonly label: string; readonly area: (areas: RepairAreas) => number }[] = [
  { label: 'Old footprint', area: ({ former }) => former },
  { label: 'Covered by the new bridge', area: ({ covered }) => covered },
  { label: 'Left showing', area: ({ showing }) => showing.area },
  { label: 'New bridge beyond it, finish to clear', area: ({ beyond }) => beyond.area },
];

const SECOND = {
  mm: { name: 'cm²', size: 100, decimals: 2 },
  in: { name: 'in²', size: MM_PER_INCH ** 2, decimals: 3 },
} as const;

/** Old footprint against new; empty cells until that is known. */
export function ShowingTable({ areas }: { readonly areas: RepairAreas | null }) {
  const { name, size, decimals } = SECOND[useStore((state) => state.device.units)];
  return (
    <table className="figures loose small-figures">
      <caption>Old footprint</caption>
      <thead>
        <tr>
          <th scope="col">On the top</th>
          <th scope="col">mm²</th>
          <th scope="col">{name}</th>
        </tr>
      </thead>
      <tbody>
        {ROWS.map(({ label, area }) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            <td>{areas && area(areas).toFixed(0)}</td>
            <td>{areas && (area(areas) / size).toFixed(decimals)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
