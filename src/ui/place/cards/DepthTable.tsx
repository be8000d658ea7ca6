import type { BridgePlace } from '../../../core/bridge/types';
import { depthStop, stopAt } from '../../../core/sheets/parts/card/depthStop';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { fine } from '../reading/fine';

const AT = {
  'slot-ends': 'Bridge under the floor of the cut slot',
  'outer-pin-holes': 'Bridge at its pins',
  free: 'Bridge in the wings, the thicker of both',
} as const;

/** The depth stop as a sum of what is known, with what is missing said. */
export function DepthTable({ place }: { readonly place: BridgePlace }) {
  const project = useStore((state) => state.project);
  const { style } = useLengths();
  const { site } = project.bridge.locating;
  const stop = depthStop(project, place);
  const { bridge, atLocating, top, plate, backing } = stop;
  const total = stopAt(stop, atLocating);
  const uncut = stopAt(stop, bridge);
  const rows = [
    { name: AT[site], mm: atLocating, missing: 'enter the wings on Draw, sole' },
    { name: 'Top', mm: top, missing: 'read it at the soundhole’s edge' },
    { name: 'Bridge plate', mm: plate, missing: 'read it; enter it on Draw' },
    { name: 'Into the backing block', mm: backing, missing: '' },
  ];
  const known = rows.reduce((sum, { mm }) => sum + (mm ?? 0), 0);
  return (
    <>
      <table className="figures loose small-figures depth">
        <caption>Depth stop, full width of the drill</caption>
        <tbody>
          {rows.map(({ name, mm, missing }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{mm === null ? missing : fine(mm, style)}</td>
            </tr>
          ))}
          <tr className="total">
            <th scope="row">Stop at</th>
            <td>
              {total === null ? `${fine(known, style)} and what is missing` : <strong>{fine(total, style)}</strong>}
            </td>
          </tr>
        </tbody>
      </table>
      {site === 'slot-ends' && (
        <p className="field-note">
          With the slot not cut yet the bridge is {fine(bridge, style)} thick there:{' '}
          {uncut === null ? `${fine(bridge - (atLocating ?? 0), style)} more` : `stop at ${fine(uncut, style)}`}.
        </p>
      )}
    </>
  );
}
