import { useMemo, useState } from 'react';
import { sideSection } from '../../../core/drawing/sideView/sideSection';
import { SelectRow } from '../../fields/SelectRow';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { EditablePicture } from './EditablePicture';
import { useSide } from './useSide';

const CENTRELINE = 'centreline';

/** The bridge cut along the centreline or along a string. */
export function SectionView() {
  const [along, setAlong] = useState(CENTRELINE);
  const side = useSide();
  const project = useStore((state) => state.project);
  const { saddle, slot, bridge, scale } = useStore((state) => state.derived);
  const { style } = useLengths();
  const { strings } = project;
  const index = strings.findIndex(({ id }) => id === along);
  const heights = side?.heights.ok ? side.heights.value : null;
  const picture = useMemo(
    () =>
      heights !== null && saddle.ok && slot.ok && bridge.ok && scale.ok
        ? sideSection(
            {
              project,
              limits: project.limits,
              heights,
              saddle: saddle.value,
              slot: slot.value,
              place: bridge.value,
              scaleLength: scale.value.scaleLength,
              string: index === -1 ? null : index,
            },
            style,
          )
        : null,
    [project, heights, saddle, slot, bridge, scale, index, style],
  );
  const problems = side === null || side.heights.ok ? [] : side.heights.issues;
  return (
    <>
      <SelectRow
        label="Section along"
        value={index === -1 ? CENTRELINE : along}
        choices={[
          { value: CENTRELINE, label: 'the centreline' },
          ...strings.map(({ id, name }, place) => ({ value: id, label: `string ${place + 1} (${name})` })),
        ]}
        choose={setAlong}
      />
      {picture !== null && <EditablePicture picture={picture} />}
      {problems.map(({ path, code, message }) => (
        <p key={`${path} ${code}`} className="not-yet">
          Not computed: {message}
        </p>
      ))}
    </>
  );
}
