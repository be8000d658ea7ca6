import { newBuild } from '../document/newBuild';
import type { About, Project } from '../document/types';
import { withoutReadings } from './withoutReadings';

/** A name for what is new, and the moment, ISO 8601. */
export interface Fresh {
  readonly id: string;
  readonly now: string;
}

const LONGEST_NAME = 80;

const begun = (about: About, now: string): About => ({ ...about, created: now, changed: now });

const fromHere = ({ id, revision }: Project): About['parent'] => ({ id, revision });

/**
 * One instrument of a model, or another one of an instrument's model: the design, with nothing read, no notes and no photos
 * of its own yet.
 */
export const instrumentOf = (project: Project, serial: string, { id, now }: Fresh): Project => ({
  ...withoutReadings(project),
  id,
  revision: 0,
  about: {
    ...begun(project.about, now),
    notes: '',
    pictures: [],
    parent: project.build === null ? fromHere(project) : (project.about.parent ?? fromHere(project)),
  },
  build: { ...newBuild(), serial },
});

/** A model of an instrument: its design, with nothing of what was read or done. */
export const modelOf = (project: Project, { id, now }: Fresh): Project => ({
  ...withoutReadings(project),
  id,
  revision: 0,
  about: { ...begun(project.about, now), pictures: [], parent: fromHere(project) },
  build: null,
});

/** The same once more, readings and photos too, under a name that says so. An instrument's copy is of the same model. */
export const copyOf = (project: Project, { id, now }: Fresh): Project => ({
  ...project,
  id,
  revision: 0,
  about: {
    ...begun(project.about, now),
    name: `${project.about.name.slice(0, LONGEST_NAME - 5)} copy`.trim(),
    parent: project.build === null ? fromHere(project) : (project.about.parent ?? fromHere(project)),
  },
});
