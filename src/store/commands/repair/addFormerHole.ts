import { MOST_FORMER_HOLES } from '../../../core/document/repairFields';
import type { FormerHole } from '../../../core/document/repairTypes';
import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { withRepair } from './withRepair';

/** From one hole to the next when there is no step to follow, mm: six over 2 1/8 in, toward the bass. */
const STEP = { x: -((2 + 1 / 8) * 25.4) / 5, y: 0 } as const;

const freeId = (holes: readonly FormerHole[]): string => {
  const taken = new Set(holes.map(({ id }) => id));
  let number = holes.length + 1;
  while (taken.has(`h${number}`)) number += 1;
  return `h${number}`;
};

/** One more old hole, a step beyond the last. Codes: repair.none, repair.notEach, repair.holesFull. */
export const addFormerHole = (project: Project): Result<Project> =>
  withRepair(project, (repair) => {
    const { holes } = repair;
    if (holes?.kind !== 'each')
      return fail('repair.holes', 'repair.notEach', 'Expected old holes that are told one by one.');
    if (holes.each.length >= MOST_FORMER_HOLES)
      return fail('repair.holes', 'repair.holesFull', `There is room for ${MOST_FORMER_HOLES} old holes.`);
    const last = holes.each.at(-1);
    const before = holes.each.at(-2);
    const step = last && before ? { x: last.x - before.x, y: last.y - before.y } : STEP;
    const { x, y, diameter } = last ?? { x: 0, y: 0, diameter: 5 };
    const hole = { id: freeId(holes.each), x: x + step.x, y: y + step.y, diameter };
    return ok({ ...repair, holes: { ...holes, each: [...holes.each, hole] } });
  });
