import { RIM_LIMIT } from '../../core/checks/rimCheck';
import { FIELDS } from '../../core/document/fieldTable';
import { SHAPE_PARAMETERS } from '../../core/document/shapeParameters';
import type { ShapeName } from '../../core/document/types';
import { DRILL_SOURCE } from '../../core/drills/drills';
import { FieldGroup } from '../fields/FieldGroup';
import { FieldPanel } from '../fields/FieldPanel';
import { FieldRow } from '../fields/FieldRow';
import { SelectRow } from '../fields/SelectRow';
import { Sources } from '../fields/Sources';
import { useServices } from '../services';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { AreasTable } from './AreasTable';
import { degreesOfRatio } from './degreesOfRatio';
import { drillNote } from './drillNote';
import { reamingNote } from './reamingNote';

const SHAPE_FIELD = FIELDS.draw.find(({ path }) => path === 'bridge.outline.shape');
const DRILL_SIZES = { path: 'drills', label: 'Drill sizes', source: DRILL_SOURCE };
const SHAPES = SHAPE_FIELD?.kind === 'choice' ? SHAPE_FIELD.choices : [];

/** The bridge by numbers: its shape, slot, pins and locating pins. */
export function DrawStation() {
  const { actions } = useServices().store;
  const { bridge } = useStore((state) => state.project);
  const { bare, style } = useLengths();
  const parameters = SHAPE_PARAMETERS[bridge.outline.shape];
  return (
    <FieldPanel>
      <FieldGroup title="Bridge">
        <SelectRow
          label="Bridge shape"
          path="bridge.outline.shape"
          about={SHAPE_FIELD?.help ?? ''}
          value={bridge.outline.shape}
          choices={SHAPES}
          choose={(shape) => actions.chooseShape(shape as ShapeName)}
        />
        {parameters.map(({ path }) => (
          <FieldRow key={path} path={path} />
        ))}
        <FieldRow path="bridge.thickness" />
      </FieldGroup>
      <FieldGroup title="Saddle slot">
        <FieldRow path="bridge.slot.fromFront" />
        <FieldRow path="bridge.slot.length" />
        <FieldRow path="bridge.slot.width" />
        <FieldRow path="bridge.slot.ends" />
        <FieldRow path="bridge.slot.depth" />
        <FieldRow path="bridge.slot.crown" />
        <FieldRow path="bridge.slot.slant" usual="fitted" />
      </FieldGroup>
      <FieldGroup title="Bridge pins">
        <label className="check">
          <input
            type="checkbox"
            checked={bridge.pins !== null}
            onChange={(event) => actions.choosePins(event.target.checked)}
          />
          <span>The strings are held by pins</span>
        </label>
        {bridge.pins !== null && (
          <>
            <FieldRow path="bridge.pins.spread" />
            <FieldRow path="bridge.pins.from" />
            <FieldRow path="bridge.pins.row" />
            <FieldRow path="bridge.pins.stagger" />
            <FieldRow path="bridge.pins.hole" note={drillNote(bridge.pins.hole, style.unit)} />
            <FieldRow path="bridge.pins.underHead" note={drillNote(bridge.pins.underHead, style.unit)} />
            <FieldRow path="bridge.pins.taper" note={reamingNote(bridge.pins, style.unit)} plain={degreesOfRatio} />
          </>
        )}
      </FieldGroup>
      <FieldGroup title="Locating pins" hint="Small pins that keep the bridge from creeping under the clamps.">
        <FieldRow path="bridge.locating.site" />
        <FieldRow path="bridge.locating.drill" note={drillNote(bridge.locating.drill, style.unit)} />
      </FieldGroup>
      <FieldGroup title="Finish and wood">
        <FieldRow path="bridge.rim" />
        <FieldRow
          path="limits.rim"
          usual={bare(RIM_LIMIT.value)}
          note={`Usual ${bare(RIM_LIMIT.value)}: ${RIM_LIMIT.source}.`}
        />
        <FieldRow path="bridge.density" />
        <AreasTable />
      </FieldGroup>
      <Sources fields={[...parameters, ...FIELDS.draw, DRILL_SIZES]} />
    </FieldPanel>
  );
}
