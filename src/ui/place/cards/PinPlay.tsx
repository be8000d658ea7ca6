import type { BridgePlace } from '../../../core/bridge/types';
import { ERROR_SOURCES } from '../../../core/budget/errorSources';
import { pinLooseness } from '../../../core/budget/pinLooseness';
import { distance } from '../../../core/geom/points';
import { FieldRow } from '../../fields/FieldRow';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { fine } from '../reading/fine';
import { degrees } from './coverage';
import { usualSize } from './usualSize';

const PIN = ERROR_SOURCES.find(({ id }) => id === 'placePin');

/** What pins that are loose in their holes let the bridge do; nothing while both stand in one place. */
export function PinPlay({ place }: { readonly place: BridgePlace }) {
  const { placePin } = useStore((state) => state.project.doubts);
  const { placement } = useStore((state) => state.derived);
  const { style, withUnit } = useLengths();
  const [one, other] = place.locating;
  if (PIN === undefined || one === undefined || other === undefined) return null;
  const apart = distance(one.centre, other.centre);
  const clearance = placePin ?? PIN.usual;
  const usual = usualSize(PIN);
  const { shift, turn } = apart > 0 ? pinLooseness(clearance, apart) : { shift: clearance / 2, turn: Number.NaN };
  return (
    <>
      <FieldRow path="doubts.placePin" usual={usual} note={`Usual ${usual}: ${PIN.source}.`} />
      <p className="card-figure">
        It lets the bridge move ±{fine(shift, style)}
        {placement.ok && `, ±${(shift * placement.value.centsPerMm).toFixed(1)} cents`}, and turn{' '}
        {Number.isFinite(turn) ? `±${degrees(turn)}` : 'freely: both pins stand in one place'}.
      </p>
      <p className="field-note">
        Pins {withUnit(apart)} apart. Half the clearance either way; turned by clearance over distance. Source: computed
        here, a stiff bridge on two pins.
      </p>
    </>
  );
}
