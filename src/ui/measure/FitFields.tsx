import { FieldRow } from '../fields/FieldRow';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';

/** What the model is fitted to, how one straight saddle is laid through it, and the player's finger. */
export function FitFields() {
  const { by, fit } = useStore((state) => state.project.compensation);
  return (
    <>
      <FieldRow path="compensation.fit.match" />
      {fit.match === 'range' && (
        <>
          <FieldRow path="compensation.fit.firstFret" />
          <FieldRow path="compensation.fit.lastFret" />
          <FieldRow path="compensation.fit.nut" />
        </>
      )}
      <FieldRow path="compensation.fit.line" />
      {by === 'rule' && <p className="field-note">A rule of thumb is a straight line already.</p>}
      <FieldRow path="bridge.slot.slant" usual="fitted" />
      <SlantNow />
      <FieldRow path="setup.fingerDistance" />
      <FieldRow path="setup.pushDown" />
    </>
  );
}

/** The slant as it stands, in degrees and as a rise over the slot. */
function SlantNow() {
  const { placement } = useStore((state) => state.derived);
  const slot = useStore((state) => state.project.bridge.slot.length);
  const { withUnit } = useLengths();
  if (!placement.ok) return null;
  const { slant } = placement.value;
  return (
    <p className="field-note">
      Now {((slant * 180) / Math.PI).toFixed(2)}°, {withUnit(Math.sin(slant) * slot)} over the slot of {withUnit(slot)}.
    </p>
  );
}
