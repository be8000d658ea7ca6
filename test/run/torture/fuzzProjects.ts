import { createDerive } from '../../../src/core/derive/createDerive';
import type { Project } from '../../../src/core/document/types';
import { validateProject } from '../../../src/core/document/validateProject';
import { buildDrawing, type View } from '../../../src/core/drawing/buildDrawing';
import { demoProject } from '../../../src/core/kinds/demo';
import { KINDS } from '../../../src/core/kinds/kinds';
import { decodeProject } from '../../../src/persistence/decodeProject';
import { encodeProject } from '../../../src/persistence/encodeProject';
import { decodeLibrary, type LibraryContent } from '../../../src/persistence/library/decodeLibrary';
import { makeAround } from '../../../src/store/makeAround';
import { COMMANDS } from '../../store/random/commandTable';
import { dice } from '../../store/random/dice';
import { damagedJson } from './fuzzJson';
import { type FuzzRun, fuzzRun } from './fuzzRun';
import { damagedText } from './fuzzText';

const WHEN = '2026-03-01T09:00:00.000Z';

/** A project after this many commands of all kinds, so that every group of it holds something. */
const worked = (project: Project, seed: number, commands: number): Project => {
  const chance = dice(seed);
  const rows = Object.values(COMMANDS);
  let now = project;
  for (let left = commands; left > 0; left--) {
    const after = chance.of(rows)?.(now, chance)(now);
    if (after?.ok === true) now = after.value;
  }
  return now;
};

const samples = (): readonly string[] => {
  const starts = [demoProject('fuzz', WHEN), ...KINDS.map(({ make }) => make('fuzz', WHEN))];
  return starts.flatMap((project, index) => [project, worked(project, 31 + index, 150)]).map(encodeProject);
};

/** What is wrong with a project that was taken; null for one that can be worked with and kept. */
export const wrongProject = (project: Project): string | null => {
  const [wrong] = validateProject(project);
  if (wrong !== undefined) return `a value that its field forbids: ${wrong.message}`;
  const text = encodeProject(project);
  const again = decodeProject(text);
  if (!again.ok) return `not read again: ${again.issues[0]?.message}`;
  if (encodeProject(again.value) !== text) return 'written otherwise once it was read again';
  const { hand, nut } = project.instrument;
  const view: View = { hand, datum: nut.datum, style: { unit: 'mm', decimals: 1 } };
  const derived = createDerive()(project);
  buildDrawing(derived, view);
  makeAround(() => {})(project, derived, view);
  return null;
};

/** Files of which every second is damaged as text, the others in their values. */
const damagedFiles =
  (files: readonly string[], seed: number) =>
  (number: number): string => {
    const chance = dice(seed + number);
    const sample = chance.of(files) ?? '';
    return number % 2 === 0 ? damagedText(sample, chance.of(files) ?? '', chance) : damagedJson(sample, chance);
  };

/** Damaged project files. */
export const fuzzProjects = (count: number, seed: number, begin?: (number: number) => void): FuzzRun =>
  fuzzRun(count, damagedFiles(samples(), seed), decodeProject, wrongProject, begin);

/** Libraries of one to three projects each, with a photo and a bench. */
const libraries = (): readonly string[] => {
  const projects: readonly unknown[] = samples().map((text) => JSON.parse(text));
  return projects.map((_, index) =>
    JSON.stringify({
      format: 'saddlemark-library',
      version: 1,
      projects: projects.slice(index, index + 1 + (index % 3)),
      archived: ['fuzz'],
      pictures: [{ id: 'photo', type: 'image/jpeg', base64: '/9j/4AAQSkZJRgABAQAAAQABAAD/2Q==' }],
      bench: '{"profiles":[],"chosen":null}',
    }),
  );
};

const wrongLibrary = ({ projects, pictures }: LibraryContent): string | null =>
  pictures.some(({ bytes }) => !(bytes instanceof ArrayBuffer))
    ? 'a photo without bytes'
    : (projects.map(wrongProject).find((wrong) => wrong !== null) ?? null);

/** Damaged files of a whole library. */
export const fuzzLibraries = (count: number, seed: number, begin?: (number: number) => void): FuzzRun =>
  fuzzRun(count, damagedFiles(libraries(), seed), decodeLibrary, wrongLibrary, begin);
