import type { SlotOverlap } from '../../../core/repair/types';
import { useStore } from '../../useStore';
import { fine, signedFine } from './fineLengths';

/** Old slot and new slot under the outer strings and in the middle. */
export function OverlapTable({ overlaps }: { readonly overlaps: readonly SlotOverlap[] }) {
  const unit = useStore((state) => state.device.units);
  return (
    <table className="figures loose small-figures">
      <caption>New slot over the filled one, {unit}</caption>
      <thead>
        <tr>
          <th scope="col">Along the centreline</th>
          <th scope="col">Moved back</th>
          <th scope="col">Shared</th>
          <th scope="col">Wood between</th>
        </tr>
      </thead>
      <tbody>
        {overlaps.map(({ id, label, shared, moved }) => (
          <tr key={id}>
            <th scope="row">{label}</th>
            <td>{signedFine(moved, unit)}</td>
            <td>{fine(Math.max(0, shared), unit)}</td>
            <td>{fine(Math.max(0, -shared), unit)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
