import type { DrawnOutline } from '../../../core/document/outlineTypes';
import { arcGeometry } from '../../../core/geom/arcGeometry';
import { closedSegments } from '../../../core/geom/closedSegments';
import type { SegmentKind } from '../../../core/geom/edit/setSegmentKind';
import { setRadius } from '../../../store/commands/outline/setRadius';
import { setSegmentKind } from '../../../store/commands/outline/setSegmentKind';
import { SelectRow } from '../../fields/SelectRow';
import { useServices } from '../../services';
import { LengthBox } from './LengthBox';

const KINDS = [
  { value: 'line', label: 'a straight line' },
  { value: 'arc', label: 'a true arc' },
  { value: 'curve', label: 'a curve with handles' },
] as const;
const LONGEST_RADIUS = 5000;

interface SegmentFieldsProps {
  readonly outline: DrawnOutline;
  readonly index: number;
}

/** What leads from a node to the next one. */
export function SegmentFields({ outline, index }: SegmentFieldsProps) {
  const { actions } = useServices().store;
  const sides = closedSegments(outline.path);
  const side = sides[index];
  if (side === undefined) return null;
  const next = ((index + 1) % sides.length) + 1;
  const { start, segment } = side;
  const kind: SegmentKind = segment.kind === 'cubic' ? 'curve' : segment.kind;
  const choose = (value: string): void => {
    const label = `From node ${index + 1} to ${next}: ${KINDS.find((each) => each.value === value)?.label ?? value}`;
    const [issue] = actions.change(label, (project) => setSegmentKind(project, index, value as SegmentKind));
    if (issue !== undefined) actions.warn(issue.message);
  };
  return (
    <>
      <SelectRow label={`To node ${next} leads`} value={kind} choices={KINDS} choose={choose} />
      {segment.kind === 'arc' && (
        <LengthBox
          path={`node.${index}.radius`}
          label="Radius of that arc"
          help="A true arc between its two nodes, which stay."
          value={arcGeometry(start, segment).radius}
          min={0.1}
          max={LONGEST_RADIUS}
          take={(radius) =>
            actions.change(`Radius from node ${index + 1} to ${next}`, (project) => setRadius(project, index, radius))
          }
        />
      )}
    </>
  );
}
