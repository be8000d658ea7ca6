import { MOST_STRINGS } from '../../core/document/stringCount';
import { noteSource } from '../../core/document/stringFields';
import type { InstrumentString, Project } from '../../core/document/types';
import { fail, ok, type Result } from '../../core/result';
import { numberCourses } from './numberCourses';

/** Which string to copy, from 0, and whether the copy joins its course or makes one of its own. */
export interface AddString {
  readonly after: number;
  readonly pair: boolean;
}

const newId = (strings: readonly InstrumentString[]): string => {
  const taken = new Set(strings.map(({ id }) => id));
  let number = strings.length + 1;
  while (taken.has(`s${number}`)) number += 1;
  return `s${number}`;
};

/**
 * One more string behind another, with that one's figures to start from. Codes: strings.many, strings.unknown, and
 * strings.paired when the course has its pair already.
 */
export const addString = (project: Project, { after, pair }: AddString): Result<Project> => {
  const { strings } = project;
  const from = strings[after];
  if (from === undefined) return fail('strings', 'strings.unknown', 'There is no such string.');
  if (strings.length >= MOST_STRINGS)
    return fail('strings', 'strings.many', `There is room for ${MOST_STRINGS} strings.`);
  if (pair && strings.filter(({ course }) => course === from.course).length > 1)
    return fail('strings', 'strings.paired', 'This course has its pair already.');
  const copy: InstrumentString = {
    ...from,
    id: newId(strings),
    // No course lies between two, so that a half parts them until they are numbered again.
    course: pair ? from.course : from.course + 0.5,
    source: noteSource('copied from another string; ', from.source),
  };
  // A string of its own goes behind the whole course that it follows.
  const place = pair ? after + 1 : strings.filter(({ course }) => course <= from.course).length;
  return ok({ ...project, strings: numberCourses([...strings.slice(0, place), copy, ...strings.slice(place)]) });
};
