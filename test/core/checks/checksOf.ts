import type { DesignCheck } from '../../../src/core/checks/types';
import { createCheckStep } from '../../../src/core/derive/createCheckStep';
import { createDerive } from '../../../src/core/derive/createDerive';
import type { Project } from '../../../src/core/document/types';

/** The design checks of a project. */
export const checksOf = (project: Project): readonly DesignCheck[] =>
  createCheckStep()(project, createDerive()(project));

/** One of them, which has to be there. */
export const checkOf = (project: Project, id: string): DesignCheck => {
  const found = checksOf(project).find((each) => each.id === id);
  if (found === undefined) throw new Error(`There is no check ${id}.`);
  return found;
};
