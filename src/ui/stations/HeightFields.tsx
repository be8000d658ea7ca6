import { Suspense } from 'react';
import { FieldGroup } from '../fields/FieldGroup';
import { FieldRow } from '../fields/FieldRow';
import { More } from '../fields/More';
import { lazyPanel } from '../lazyPanels';
import { useStore } from '../useStore';

const HeightVerdict = lazyPanel('HeightVerdict');
const HeightMore = lazyPanel('HeightMore');

/** Whether this bridge can work at this neck angle: before all else, since nothing later puts it right. */
export function HeightFields() {
  const read = useStore((state) => state.project.height.straightedge !== null);
  return (
    <FieldGroup
      id="group-heights"
      title="Heights, before all else"
      hint="A straightedge on the frets, carried on to the saddle, tells whether the bridge suits the neck."
    >
      <FieldRow path="height.straightedge" />
      <FieldRow path="bridge.thickness" />
      <FieldRow path="bridge.slot.depth" />
      <FieldRow path="setup.action.treble" />
      <FieldRow path="setup.action.bass" />
      <FieldRow path="setup.relief" />
      {read && (
        <Suspense fallback={null}>
          <HeightVerdict />
        </Suspense>
      )}
      <More summary="Nut, radius, each string, limits">
        <HeightMore />
      </More>
    </FieldGroup>
  );
}
