import type { DrawnOutline } from '../../../core/document/outlineTypes';
import type { Project } from '../../../core/document/types';
import { nodePart } from '../../../core/drawing/nodes/nodePart';
import { type NodeJoin, nodesOf } from '../../../core/geom/edit/nodesOf';
import type { Point } from '../../../core/geom/types';
import type { Issue, Result } from '../../../core/result';
import { deleteNodes } from '../../../store/commands/outline/deleteNodes';
import { insertNode } from '../../../store/commands/outline/insertNode';
import { moveHandle } from '../../../store/commands/outline/moveHandle';
import { roundCorner } from '../../../store/commands/outline/roundCorner';
import { setJoin } from '../../../store/commands/outline/setJoin';
import { setNodePlace } from '../../../store/commands/outline/setNodePlace';
import { SelectRow } from '../../fields/SelectRow';
import { useServices } from '../../services';
import { LengthBox } from './LengthBox';
import { SegmentFields } from './SegmentFields';

const ACROSS = 'From the centreline: + toward the treble side, − toward the bass side.';
const ALONG = 'From the front edge on the centreline: + toward the tail.';
/** Outlines reach no farther than this, mm. */
const REACH = 500;

const JOINS = [
  { value: 'corner', label: 'a corner' },
  { value: 'smooth', label: 'smooth' },
] as const;

interface NodeFieldsProps {
  readonly outline: DrawnOutline;
  readonly index: number;
}

/** All about one node of the outline: where it lies, its handles, how it joins, and the segment that leaves it. */
export function NodeFields({ outline, index }: NodeFieldsProps) {
  const { actions } = useServices().store;
  const node = nodesOf(outline.path)[index];
  if (node === undefined) return <p className="hint">This node is no longer there.</p>;
  const name = `Node ${index + 1}`;
  const change = (label: string, command: (project: Project) => Result<Project>): readonly Issue[] =>
    actions.change(label, command);
  const press = (label: string, command: (project: Project) => Result<Project>): boolean => {
    const [issue] = change(label, command);
    if (issue !== undefined) actions.warn(issue.message);
    return issue === undefined;
  };
  const remove = (): void => {
    if (press(`Delete node ${index + 1}`, (project) => deleteNodes(project, [index]))) actions.select(['footprint']);
  };
  const add = (): void => {
    if (press(`Add a node after node ${index + 1}`, (project) => insertNode(project, index, 0.5)))
      actions.select([nodePart(index + 1)]);
  };
  const handles = (['before', 'after'] as const).flatMap((side) => {
    const at = node[side];
    return at === null ? [] : [{ side, at }];
  });

  return (
    <>
      <PlaceBoxes
        path={`node.${index}`}
        name={name}
        at={node.at}
        take={(place) => change(`Move node ${index + 1}`, (project) => setNodePlace(project, index, place))}
      />
      <SelectRow
        label={`${name} is`}
        value={node.join}
        choices={JOINS}
        choose={(join) => press(`Node ${index + 1}: ${join}`, (project) => setJoin(project, index, join as NodeJoin))}
      />
      {node.join === 'corner' && (
        <LengthBox
          path={`node.${index}.round`}
          label="Round this corner by"
          help="The corner becomes a true arc of this radius that meets both sides smoothly."
          value={0}
          min={0}
          max={REACH}
          take={(radius) => change(`Round node ${index + 1}`, (project) => roundCorner(project, index, radius))}
        />
      )}
      {handles.map(({ side, at }) => (
        <PlaceBoxes
          key={side}
          path={`node.${index}.${side}`}
          name={side === 'before' ? 'Handle before it' : 'Handle after it'}
          at={at}
          take={(place) =>
            change(`Move a handle of node ${index + 1}`, (project) =>
              moveHandle(project, index, side, { ...at, ...place }),
            )
          }
        />
      ))}
      <SegmentFields outline={outline} index={index} />
      <div className="button-row">
        <button type="button" onClick={add}>
          Add a node after it
        </button>
        <button type="button" onClick={remove}>
          Delete node {index + 1}
        </button>
      </div>
    </>
  );
}

interface PlaceBoxesProps {
  readonly path: string;
  readonly name: string;
  readonly at: Point;
  readonly take: (place: Partial<Point>) => readonly Issue[];
}

function PlaceBoxes({ path, name, at, take }: PlaceBoxesProps) {
  return (
    <>
      <LengthBox
        path={`${path}.x`}
        label={`${name}, across`}
        help={ACROSS}
        value={at.x}
        min={-REACH}
        max={REACH}
        take={(x) => take({ x })}
      />
      <LengthBox
        path={`${path}.y`}
        label={`${name}, along`}
        help={ALONG}
        value={at.y}
        min={-REACH}
        max={REACH}
        take={(y) => take({ y })}
      />
    </>
  );
}
