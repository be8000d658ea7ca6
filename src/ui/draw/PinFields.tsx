import { chooseHold, type Hold } from '../../store/commands/chooseHold';
import { chooseRamps } from '../../store/commands/chooseRamps';
import { FieldGroup } from '../fields/FieldGroup';
import { FieldRow } from '../fields/FieldRow';
import { SelectRow } from '../fields/SelectRow';
import { useServices } from '../services';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { degreesOfRatio } from './degreesOfRatio';
import { drillNote } from './drillNote';
import { reamingNote } from './reamingNote';
import { TieRows } from './slot/TieRows';

const HOLDS: readonly { readonly value: Hold; readonly label: string }[] = [
  { value: 'pins', label: 'bridge pins' },
  { value: 'tie-block', label: 'a tie block' },
  { value: 'back-edge', label: 'holes at the back edge' },
];
const NOT_TOLD = { value: 'none', label: 'not told yet' };

/** What holds the strings. */
export function PinFields() {
  const { actions } = useServices().store;
  const { pins, ties } = useStore((state) => state.project.bridge);
  const { style } = useLengths();
  const hold = pins === null ? (ties?.kind ?? NOT_TOLD.value) : 'pins';
  const choose = (value: string): void => {
    const chosen = HOLDS.find((each) => each.value === value);
    if (chosen !== undefined)
      actions.change(`Strings held by ${chosen.label}`, (project) => chooseHold(project, chosen.value));
  };
  const ramps = (wanted: boolean): void => {
    actions.change(wanted ? 'String ramps: with' : 'String ramps: without', (project) => chooseRamps(project, wanted));
  };
  return (
    <FieldGroup title="Strings at the bridge">
      <SelectRow
        label="The strings are held by"
        about="Pins, or holes along the instrument in a tie block or at the back edge of a bridge without pins."
        value={hold}
        choices={hold === NOT_TOLD.value ? [NOT_TOLD, ...HOLDS] : HOLDS}
        choose={choose}
      />
      {pins !== null && (
        <>
          <FieldRow path="bridge.pins.spread" />
          <FieldRow path="bridge.pins.from" />
          <FieldRow path="bridge.pins.row" />
          {pins.row === 'arc' && <FieldRow path="bridge.pins.rise" />}
          <FieldRow path="bridge.pins.stagger" />
          <FieldRow path="bridge.pins.hole" note={drillNote(pins.hole, style.unit)} />
          <FieldRow path="bridge.pins.underHead" note={drillNote(pins.underHead, style.unit)} />
          <FieldRow path="bridge.pins.taper" note={reamingNote(pins, style.unit)} plain={degreesOfRatio} />
          <label className="check">
            <input type="checkbox" checked={pins.ramp !== null} onChange={(event) => ramps(event.target.checked)} />
            <span>Mark string ramps</span>
          </label>
          {pins.ramp !== null && (
            <>
              <FieldRow path="bridge.pins.ramp.length" />
              <FieldRow path="bridge.pins.ramp.width" />
            </>
          )}
        </>
      )}
      {ties !== null && <TieRows ties={ties} />}
    </FieldGroup>
  );
}
