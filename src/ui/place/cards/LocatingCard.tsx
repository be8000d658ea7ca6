import { ERROR_SOURCES } from '../../../core/budget/errorSources';
import { pinLooseness } from '../../../core/budget/pinLooseness';
import { centsPerMm } from '../../../core/intonation/centsPerMm';
import { drillNote } from '../../draw/drillNote';
import { FieldGroup } from '../../fields/FieldGroup';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { GlueRow } from '../glue/GlueRow';
import { fine } from '../reading/fine';
import { CheckLine } from './CheckLine';
import './cards.css';

const SITE = {
  'slot-ends': 'in the ends of the slot',
  'outer-pin-holes': 'in the outer pin holes',
  free: 'at two places of your own',
} as const;

/** How far a drill goes on into the backing block, mm: common practice, no source. */
const INTO_BACKING = 1;

/** Holes for the locating pins: what to drill, how deep, in which order, and what a loose pin lets the bridge do. */
export function LocatingCard() {
  const project = useStore((state) => state.project);
  const { bridge, scale } = useStore((state) => state.derived);
  const around = useStore((state) => state.around);
  const { style, withUnit } = useLengths();
  const { locating, thickness, slot } = project.bridge;
  const [one, other] = bridge.ok ? bridge.value.locating : [];
  const apart =
    one === undefined || other === undefined
      ? 0
      : Math.hypot(one.centre.x - other.centre.x, one.centre.y - other.centre.y);
  const usual = ERROR_SOURCES.find(({ id }) => id === 'placePin')?.usual ?? 0;
  const clearance = project.doubts.placePin ?? usual;
  const loose = apart > 0 ? pinLooseness(clearance, apart) : null;
  const cents = scale.ok && loose !== null ? loose.shift * centsPerMm(scale.value.scaleLength, 12) : 0;
  const plate = project.body?.plate?.thickness ?? null;
  const top = project.build?.top ?? null;
  const through = locating.site === 'slot-ends' ? thickness - slot.depth : thickness;
  const known = top !== null && plate !== null;
  const braces = (around?.checks ?? []).filter(({ id }) => id.startsWith('brace'));
  return (
    <FieldGroup id="group-locating" title="Locating pins">
      <p className="card-figure">
        {locating.site === 'outer-pin-holes' ? 'Two holes' : 'Two holes'} {fine(locating.drill, style)},{' '}
        {SITE[locating.site]}, through the bridge itself where it is taped.
      </p>
      <p className="field-note">{drillNote(locating.drill, style.unit)}</p>
      <GlueRow path="build.top" usual="not read" />
      <table className="figures loose small-figures">
        <caption>Depth stop, full width of the drill</caption>
        <tbody>
          <tr>
            <th scope="row">{locating.site === 'slot-ends' ? 'Bridge under the slot’s floor' : 'Bridge'}</th>
            <td>{withUnit(through)}</td>
          </tr>
          <tr>
            <th scope="row">Top</th>
            <td>{top === null ? 'read it at the soundhole’s edge' : withUnit(top)}</td>
          </tr>
          <tr>
            <th scope="row">Bridge plate</th>
            <td>{plate === null ? 'not entered on Draw' : withUnit(plate)}</td>
          </tr>
          <tr>
            <th scope="row">Into the backing block</th>
            <td>{withUnit(INTO_BACKING)}</td>
          </tr>
          <tr>
            <th scope="row">
              <strong>Stop at</strong>
            </th>
            <td>
              <strong>{known ? withUnit(through + top + plate + INTO_BACKING) : 'not known yet'}</strong>
            </td>
          </tr>
        </tbody>
      </table>
      <h3>Braces first</h3>
      {braces.length === 0 ? (
        <p className="field-caution">
          No brace is checked against these holes: find them with mirror and light and enter them on Draw.
        </p>
      ) : (
        <ul className="card-checks">
          {braces.map((check) => (
            <CheckLine key={check.id} check={check} />
          ))}
        </ul>
      )}
      <h3>Order</h3>
      <ol className="card-steps">
        <li>Braces and plate found; a block of wood held against the plate from inside by a clamp or a prop.</li>
        <li>First hole, through the bridge where it is taped, with the stop set.</li>
        <li>Its pin in. Read again: the bridge can only turn about it now.</li>
        <li>Second hole, its pin in. Read once more.</li>
        <li>Pins out, waxed, and tried: they go in by hand and come out by pliers.</li>
        <li>On the day of the glue: pins in before the first clamp, out before the glue grabs.</li>
      </ol>
      {loose !== null && (
        <p>
          Pins {fine(clearance, style)} loose in all, {withUnit(apart)} apart, let the bridge move{' '}
          {fine(loose.shift, style)} either way ({cents.toFixed(1)} cents) and turn{' '}
          {((loose.turn * 180) / Math.PI).toFixed(2)}°: half the clearance, and clearance over distance, computed here.
          The clearance stands among the errors above.
        </p>
      )}
      <p className="field-caution">
        Drill slowly and square to the top, eyes shielded; never steady the plate from inside with a hand. Dust of
        rosewoods and others makes skin and lungs allergic: draw it off, wear a respirator. Labels and local rules come
        before this card.
      </p>
    </FieldGroup>
  );
}
