import { DATUM_NAME } from '../../core/placement/datumName';
import { RunningTimers } from '../place/run/timers/RunningTimers';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { ChecksTable } from './ChecksTable';
import { CompensationTable } from './CompensationTable';
import { DistancesTable } from './DistancesTable';
import { FigureStyle } from './FigureStyle';
import { PlacementTable } from './PlacementTable';
import { ShapingTable } from './ShapingTable';
import '../style/numbers.css';

/** Every figure that the maker measures by, whatever the station. */
export function NumbersPanel() {
  const { placement, saddle, issues } = useStore((state) => state.derived);
  const areas = useStore((state) => state.areas);
  const around = useStore((state) => state.around);
  const datum = useStore((state) => state.project.instrument.nut.datum);
  const thickness = useStore((state) => state.project.bridge.slot.width);
  const { withUnit } = useLengths();
  const reasons = issues.map(({ message }) => message).join(' ');
  return (
    <aside className="numbers" aria-label="Numbers">
      <RunningTimers />
      <div className="numbers-head">
        <h2 id="placement-title">Placement numbers</h2>
        <FigureStyle />
      </div>
      {placement.ok ? (
        <>
          <p className="hint">
            “{DATUM_NAME[datum].short}” is the {DATUM_NAME[datum].full}; all on the centreline unless named.
          </p>
          <PlacementTable placement={placement.value} />
        </>
      ) : (
        <p className="not-yet">Not computed: {reasons}</p>
      )}
      <h2 id="checks-title">Design checks</h2>
      {around === null && <p className="hint">Checking …</p>}
      <ChecksTable checks={[...(around?.checks ?? []), ...(areas?.ok ? areas.value.checks : [])]} issues={issues} />
      {saddle.ok && (
        <>
          <h2 id="compensation-title">Compensation by string</h2>
          <p className="hint">Behind the octave line. + cents: the string plays sharp at the 12th fret.</p>
          <CompensationTable strings={saddle.value.strings} />
          <h2 id="shaping-title">Shaping the saddle</h2>
          <p className="hint">
            From the front face of a saddle {withUnit(thickness)} thick to where each string must break.
          </p>
          <ShapingTable strings={saddle.value.strings} />
        </>
      )}
      {placement.ok && (
        <>
          <h2 id="distances-title">Distances to square by</h2>
          <p className="hint">On the plan, both ends of the rule at one height. Treble and bass must agree.</p>
          <DistancesTable distances={placement.value.distances} />
        </>
      )}
    </aside>
  );
}
