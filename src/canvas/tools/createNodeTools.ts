import { nodeOfPart, nodePart, nodesAmong } from '../../core/drawing/nodes/nodePart';
import { nearestOnPath } from '../../core/geom/edit/nearestOnPath';
import { nodesOf } from '../../core/geom/edit/nodesOf';
import type { KeyPress } from '../../core/ports';
import { deleteNodes } from '../../store/commands/outline/deleteNodes';
import { insertNode } from '../../store/commands/outline/insertNode';
import { outlineLabel } from '../../store/commands/outline/outlineLabel';
import type { Store } from '../../store/createStore';
import type { Press, ToolView } from '../handTools';
import type { Movable } from './createDrag';
import { type Frame, frameOf } from './frame';
import { type NodeHit, nodeAt } from './nodeAt';
import { nodeMovable } from './nodeMovable';
import { outlineInHand } from './outlineInHand';
import type { MovableNeeds } from './partMovable';
import { reachOf } from './reach';

/** What the tools do with the nodes of an outline drawn freely. */
export interface NodeTools {
  movableAt(press: Press, needs: MovableNeeds): Movable | null;
  pick(press: Press, more: boolean): boolean;
  press(key: KeyPress): boolean;
}

/** The tools for nodes, on the drawing of a store seen through a view. */
export const createNodeTools = ({ actions, getState }: Store, view: ToolView): NodeTools => {
  const frameNow = (): Frame | null => {
    const { project, derived } = getState();
    return derived.bridge.ok ? frameOf(view, project.instrument.hand, derived.bridge.value.front) : null;
  };
  const hitAt = (press: Press): NodeHit | null => {
    const state = getState();
    const [outline, frame] = [outlineInHand(state), frameNow()];
    if (outline === null || frame === null) return null;
    return nodeAt(nodesOf(outline.path), nodesAmong(state.selection), frame, press);
  };
  const choose = (part: string, more: boolean): void => {
    if (more) actions.press(part, true);
    else actions.select([part]);
  };

  /** Puts a node where the outline was pressed. */
  const add = (press: Press): void => {
    const { derived, project } = getState();
    const frame = frameNow();
    if (frame === null || !derived.bridge.ok) return;
    const at = frame.toFootprint(press.at);
    const { front, footprint } = derived.bridge.value;
    const { outline } = footprint;
    const found = nearestOnPath(outline, { x: at.x, y: at.y + front });
    if (found === null || found.distance > reachOf(press.by) / view.camera().zoom) {
      actions.say('Press on the outline itself: a node is put there.');
      return;
    }
    const { segment, t } = found;
    const [issue] = actions.change(outlineLabel(project, 'Add a node'), (present) => insertNode(present, segment, t));
    if (issue !== undefined) actions.warn(issue.message);
    else if (getState().project !== project) actions.select([nodePart(segment + 1)]);
  };

  return {
    movableAt: (press, needs) => {
      const outline = outlineInHand(getState());
      const hit = hitAt(press);
      if (outline === null || hit === null) return null;
      const part = nodePart(hit.node.index);
      if (hit.kind === 'node' && !getState().selection.includes(part)) choose(part, getState().handwork.several);
      return nodeMovable(
        hit,
        outline,
        getState().selection.filter((each) => nodeOfPart(each) !== null),
        needs,
      );
    },
    pick: (press, more) => {
      if (getState().handwork.tool === 'add') {
        add(press);
        return true;
      }
      const hit = hitAt(press);
      if (hit?.kind !== 'node') return hit !== null;
      choose(nodePart(hit.node.index), more);
      return true;
    },
    press: ({ key }) => {
      const chosen = nodesAmong(getState().selection);
      if ((key !== 'Delete' && key !== 'Backspace') || chosen.length === 0) return false;
      const label = chosen.length === 1 ? `Delete node ${(chosen[0] ?? 0) + 1}` : `Delete ${chosen.length} nodes`;
      const [issue] = actions.change(label, (project) => deleteNodes(project, chosen));
      if (issue !== undefined) actions.warn(issue.message);
      else actions.select(['footprint']);
      return true;
    },
  };
};
