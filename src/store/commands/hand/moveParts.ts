import type { Project } from '../../../core/document/types';
import { nodeOfPart, nodesAmong } from '../../../core/drawing/nodes/nodePart';
import type { PartName } from '../../../core/drawing/types';
import type { Point } from '../../../core/geom/types';
import { ok, type Result } from '../../../core/result';
import type { EditMode } from '../outline/editOutline';
import { moveNodes } from '../outline/moveNodes';
import { moveOther } from './moveOther';
import { pinOfPart } from './movePin';

/** Of several pins one stands for the row, an outer one if there is any: else the row would move once for each of them. */
const oneOfRow = (parts: readonly PartName[], last: number): readonly PartName[] => {
  const pins = parts.filter((part) => pinOfPart(part) !== null);
  const outer = pins.find((part) => pinOfPart(part) === 1 || pinOfPart(part) === last) ?? pins[0];
  return parts.filter((part) => !pins.includes(part) || part === outer);
};

/**
 * Everything that was chosen moved by the same way, mm in the instrument frame: + x to the treble side, + y toward the
 * tail. Codes: those of moveNodes and moveOther for the first part that cannot follow; then nothing moves.
 */
export const moveParts = (
  project: Project,
  parts: readonly PartName[],
  by: Point,
  mode?: EditMode,
): Result<Project> => {
  const nodes = nodesAmong(parts);
  let moved: Result<Project> = nodes.length === 0 ? ok(project) : moveNodes(project, nodes, by, mode);
  const others = parts.filter((part) => nodeOfPart(part) === null);
  for (const part of oneOfRow(others, project.strings.length)) {
    if (!moved.ok) return moved;
    // The outline that was chosen with its nodes goes with them.
    if (part === 'footprint' && nodes.length > 0) continue;
    moved = moveOther(moved.value, part, by);
  }
  return moved;
};
