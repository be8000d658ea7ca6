import { PLATE_FIELDS, SOUNDHOLE_FIELDS, WIRE_HOLE_FIELDS } from '../../core/document/bodyFields';
import { BRIDGE_GROUP_FIELDS } from '../../core/document/bridgeGroupFields';
import { FIELDS } from '../../core/document/fieldTable';
import { SHAPE_PARAMETERS } from '../../core/document/shapeParameters';
import { SOLE_FIELDS } from '../../core/document/soleFields';
import { DRILL_SOURCE } from '../../core/drills/drills';
import { AllFields } from '../fields/AllFields';
import { FieldPanel } from '../fields/FieldPanel';
import { Sources } from '../fields/Sources';
import { useStore } from '../useStore';
import { BodyFields } from './BodyFields';
import { LimitFields } from './checks/LimitFields';
import { FinishFields } from './FinishFields';
import { LocatingFields } from './LocatingFields';
import { OutlineFields } from './OutlineFields';
import { ByHand } from './outline/ByHand';
import { PinFields } from './PinFields';
import { RepairFields } from './RepairFields';
import { SlotFields } from './SlotFields';
import { SoleFields } from './SoleFields';

const DRILL_SIZES = { path: 'drills', label: 'Drill sizes', source: DRILL_SOURCE };

/** The bridge, and everything that it must clear. */
export function DrawStation() {
  const outline = useStore((state) => state.project.bridge.outline);
  const parameters = outline.kind === 'drawn' ? [] : SHAPE_PARAMETERS[outline.shape];
  return (
    <AllFields>
      <FieldPanel>
        <ByHand place="beside" />
        <OutlineFields />
        <SlotFields />
        <PinFields />
        <LocatingFields />
        <FinishFields />
        <SoleFields />
        <BodyFields />
        <RepairFields />
        <LimitFields />
        <Sources
          fields={[
            ...parameters,
            ...FIELDS.draw,
            ...BRIDGE_GROUP_FIELDS,
            ...SOLE_FIELDS,
            ...PLATE_FIELDS,
            ...SOUNDHOLE_FIELDS,
            ...WIRE_HOLE_FIELDS,
            DRILL_SIZES,
          ]}
        />
      </FieldPanel>
    </AllFields>
  );
}
