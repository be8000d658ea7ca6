import { DRILL_CAUTION, DRILL_CHOICE, drillOrder } from '../../../core/sheets/parts/card/drillOrder';
import { drillRows } from '../../../core/sheets/parts/card/drillRows';
import { fineLength } from '../../../core/sheets/parts/items/fineLength';
import { drillNote } from '../../draw/drillNote';
import { FieldGroup } from '../../fields/FieldGroup';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { GlueRow } from '../glue/GlueRow';
import { CheckLine } from './CheckLine';
import { DepthTable } from './DepthTable';
import { PinPlay } from './PinPlay';
import './cards.css';

/** Checks that tell whether it is known what lies under these holes. */
const BENEATH = [
  'brace-locating',
  'brace-pins',
  'brace-wire',
  'braces-none',
  'body-found',
  'brace-short',
  'brace-ends',
];

const sentence = (step: string): string => `${step.charAt(0).toUpperCase()}${step.slice(1)}.`;

/** Holes for the locating pins: what to drill, how deep, in which order, and what a loose pin lets the bridge do. */
export function LocatingCard() {
  const project = useStore((state) => state.project);
  const { bridge } = useStore((state) => state.derived);
  const around = useStore((state) => state.around);
  const { unit } = useLengths().style;
  if (!bridge.ok) return null;
  const rows = drillRows(project, bridge.value);
  const holes = rows.find(({ id }) => id === 'locating');
  if (holes === undefined) return null;
  const beneath = (around?.checks ?? []).filter(({ id }) => BENEATH.includes(id));
  return (
    <FieldGroup id="group-locating" title="Locating pins">
      <p className="card-figure">
        {holes.count} holes of{' '}
        <strong>
          {fineLength(holes.diameter, unit)} {unit}
        </strong>{' '}
        {holes.where}, through the bridge itself where it is taped.
      </p>
      <p>{drillNote(holes.diameter, unit)}</p>
      <p className="field-note">{DRILL_CHOICE}</p>
      <h3>Braces first</h3>
      {beneath.length === 0 ? (
        <p className="field-caution">
          Nothing was entered of what lies beneath the top: find braces and plate with mirror and light, and enter them
          on Draw, body, to have these holes checked.
        </p>
      ) : (
        <ul className="card-checks">
          {beneath.map((check) => (
            <CheckLine key={check.id} check={check} />
          ))}
        </ul>
      )}
      <h3>Depth</h3>
      <GlueRow path="build.top" usual="not read" />
      <DepthTable place={bridge.value} />
      <h3>Order</h3>
      <ol className="card-steps">
        <li>A block of wood held against the plate from inside, by a clamp or a prop.</li>
        {drillOrder(rows).map((step) => (
          <li key={step}>{sentence(step)}</li>
        ))}
      </ol>
      <p>
        For the glue: wax the pins and try them first; they go in by hand and come out by pliers. In before the first
        clamp, <strong>out before the glue grabs</strong>.
      </p>
      <h3>A pin that is loose</h3>
      <PinPlay place={bridge.value} />
      <p className="field-caution">
        {DRILL_CAUTION} Shield your eyes. Dust of rosewoods and others makes skin and lungs allergic.
      </p>
    </FieldGroup>
  );
}
