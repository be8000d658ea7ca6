import type { Project } from '../../core/document/types';

/** Of an instrument's name, and what tells a copy apart by it. */
const LONGEST_NAME = 80;
const THIS_TAB = ' (this tab’s)';

/** The same project with an id and a name of its own. */
export const beside = (project: Project, id: string): Project => {
  const name = `${project.about.name.slice(0, LONGEST_NAME - THIS_TAB.length).trimEnd()}${THIS_TAB}`;
  return { ...project, id, about: { ...project.about, name } };
};
