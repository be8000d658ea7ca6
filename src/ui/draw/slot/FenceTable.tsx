import { fenceSettings } from '../../../core/bridge/fenceSettings';
import type { BridgePlace, SlotPlace } from '../../../core/bridge/types';
import type { Cutting } from '../../../core/document/types';
import { FieldRow } from '../../fields/FieldRow';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';

interface FenceTableProps {
  readonly cutting: Cutting;
  readonly slot: SlotPlace;
  readonly bridge: BridgePlace;
}

/** Where the fence goes for each wall of the slot, at both ends of the bridge. */
export function FenceTable({ cutting, slot, bridge }: FenceTableProps) {
  const width = useStore((state) => state.project.bridge.slot.width);
  const { withUnit, bare } = useLengths();
  const settings = fenceSettings(cutting, width, slot, bridge);
  return (
    <>
      <FieldRow path="bridge.cutting.cutter" />
      <FieldRow path="bridge.cutting.base" />
      {settings.ok ? (
        <>
          <table className="figures loose small-figures">
            <caption>Fence ahead of the front edge</caption>
            <thead>
              <tr>
                <th scope="col">Cutter along the</th>
                <th scope="col">Treble end</th>
                <th scope="col">Bass end</th>
              </tr>
            </thead>
            <tbody>
              {settings.value.passes.map(({ wall, treble, bass }) => (
                <tr key={wall}>
                  <th scope="row">{settings.value.passes.length === 1 ? 'slot, one pass' : `${wall} wall`}</th>
                  <td>{bare(treble)}</td>
                  <td>{bare(bass)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p className="hint">
            The fence lies on the nut side, parallel to the slot. Lay a straightedge along the front edge and set the
            fence’s edge off from it at {withUnit(settings.value.half)} to each side of the centreline: plus is ahead of
            the front edge, toward the nut.
          </p>
        </>
      ) : (
        <p className="not-yet">{settings.issues.map(({ message }) => message).join(' ')}</p>
      )}
      <p className="hint">
        Unplug the router before you measure or change the cutter. Clamp a waste piece first, cut it by both settings
        and read the slot’s width. Shim the base level with the bridge, cut in shallow steps, move so that the cutter
        pulls the base against the fence, and keep the top covered. Wear eye and dust protection.
      </p>
    </>
  );
}
