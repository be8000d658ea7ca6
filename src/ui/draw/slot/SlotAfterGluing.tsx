import { slotCuts } from '../../../core/bridge/slotCuts';
import { chooseCutting } from '../../../store/commands/chooseCutting';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { FenceTable } from './FenceTable';

const PLACES = { treble: 'Treble end', centre: 'Centreline', bass: 'Bass end' } as const;

/** A front edge that runs so far off its line at a slot end is told, mm. */
const OFF_LINE = 0.1;

/** What a slot is laid out and cut by once the bridge is glued: from the front edge, and by a fence. */
export function SlotAfterGluing() {
  const { actions } = useServices().store;
  const { slot, bridge } = useStore((state) => state.derived);
  const cutting = useStore((state) => state.project.bridge.cutting);
  const { withUnit, bare } = useLengths();
  if (!slot.ok || !bridge.ok) return <p className="not-yet">Not computed: the slot has no place yet.</p>;
  const cuts = slotCuts(slot.value, bridge.value);
  const off = cuts.filter(({ edgeBehind }) => Math.abs(edgeBehind) > OFF_LINE);
  const choose = (wanted: boolean): void => {
    const label = wanted ? 'Fence settings: with' : 'Fence settings: without';
    actions.change(label, (project) => chooseCutting(project, wanted));
  };
  return (
    <>
      <table className="figures loose small-figures">
        <caption>Front edge to the walls of the slot</caption>
        <thead>
          <tr>
            <th scope="col">Along the centreline’s direction</th>
            <th scope="col">Across</th>
            <th scope="col">Front wall</th>
            <th scope="col">Back wall</th>
          </tr>
        </thead>
        <tbody>
          {cuts.map(({ id, x, toFrontWall, toBackWall }) => (
            <tr key={id}>
              <th scope="row">{PLACES[id]}</th>
              <td>{bare(Math.abs(x))}</td>
              <td>{bare(toFrontWall)}</td>
              <td>{bare(toBackWall)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="hint">
        “Across” is from the centreline. Scribe both walls by these, then read the placement numbers again before the
        first cut: once it is cut, the slot sets the pitch.
      </p>
      {off.map(({ id, edgeBehind }) => (
        <p key={id} className="hint">
          {PLACES[id]}: the front edge there lies {withUnit(Math.abs(edgeBehind))}{' '}
          {edgeBehind > 0 ? 'behind' : 'ahead of'} where it crosses the centreline; the figures are from the edge that
          is there.
        </p>
      ))}
      <label className="check">
        <input type="checkbox" checked={cutting !== null} onChange={(event) => choose(event.target.checked)} />
        <span>Fence settings for a router</span>
      </label>
      {cutting !== null && <FenceTable cutting={cutting} slot={slot.value} bridge={bridge.value} />}
    </>
  );
}
