import { fieldAt } from '../../../core/document/fieldAt';
import type { Project } from '../../../core/document/types';
import { add } from '../../../core/geom/points';
import type { Point } from '../../../core/geom/types';
import { fail, type Result } from '../../../core/result';
import { setField } from '../setField';
import { movePin, pinOfPart } from './movePin';

/** The side of each locating pin by its name. */
export const LOCATING_SIDES = { 'locating pin, treble': 'treble', 'locating pin, bass': 'bass' } as const;

const isLocating = (part: string): part is keyof typeof LOCATING_SIDES => Object.hasOwn(LOCATING_SIDES, part);

const moveFootprint = (project: Project, by: Point): Result<Project> => {
  if (by.y === 0) return fail('bridge', 'move.centred', 'The bridge stays on the centreline. It moves along it.');
  const value = project.bridge.slot.fromFront - by.y;
  return setField(project, { field: fieldAt(project, 'bridge.slot.fromFront'), value });
};

const moveLocating = (project: Project, side: 'treble' | 'bass', by: Point): Result<Project> => {
  const { locating } = project.bridge;
  if (locating.site !== 'free' || locating.points === null)
    return fail(
      'bridge.locating',
      'move.locating',
      'The locating pins go with the slot or the pins. Choose two free points for them to move them.',
    );
  const { x, y } = add(locating.points[side], by);
  const set = (to: Project, way: 'x' | 'y', value: number): Result<Project> =>
    setField(to, { field: fieldAt(to, `bridge.locating.points.${side}.${way}`), value });
  const across = set(project, 'x', x);
  return across.ok ? set(across.value, 'y', y) : across;
};

/**
 * A part other than a node of the outline moved by hand, mm. Footprint: along the centreline, about its slot. Codes:
 * move.fixed, move.slot, move.centred, move.locating, those of movePin and setField.
 */
export const moveOther = (project: Project, part: string, by: Point): Result<Project> => {
  const pin = pinOfPart(part);
  if (pin !== null) return movePin(project, pin, by);
  if (part === 'footprint') return moveFootprint(project, by);
  if (isLocating(part)) return moveLocating(project, LOCATING_SIDES[part], by);
  if (part === 'slot')
    return fail(
      'bridge.slot',
      'move.slot',
      'The slot stays where the strings break over the saddle. Move the footprint about it instead.',
    );
  return fail('', 'move.fixed', `The ${part} cannot be moved by hand.`);
};
