import { FieldGroup } from '../fields/FieldGroup';
import { FieldRow } from '../fields/FieldRow';
import { More } from '../fields/More';
import { useStore } from '../useStore';
import { SlotAfterGluing } from './slot/SlotAfterGluing';

/** The saddle slot. */
export function SlotFields() {
  const stopped = useStore((state) => state.project.bridge.slot.run === 'stopped');
  return (
    <FieldGroup title="Saddle slot">
      <FieldRow path="bridge.slot.fromFront" />
      <FieldRow path="bridge.slot.run" />
      {stopped && <FieldRow path="bridge.slot.length" />}
      <FieldRow path="bridge.slot.width" />
      {stopped && <FieldRow path="bridge.slot.ends" />}
      <FieldRow path="bridge.slot.depth" />
      <FieldRow path="bridge.slot.crown" />
      <FieldRow path="bridge.slot.slant" usual="fitted" />
      <More summary="Slot cut after gluing, or filled and cut again">
        <SlotAfterGluing />
      </More>
    </FieldGroup>
  );
}
