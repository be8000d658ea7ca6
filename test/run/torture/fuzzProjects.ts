import { createDerive } from '../../../src/core/derive/createDerive';
import type { Project } from '../../../src/core/document/types';
import { validateProject } from '../../../src/core/document/validateProject';
import { buildDrawing, type View } from '../../../src/core/drawing/buildDrawing';
import { demoProject } from '../../../src/core/kinds/demo';
import { KINDS } from '../../../src/core/kinds/kinds';
import { decodeProject } from '../../../src/persistence/decodeProject';
import { encodeProject } from '../../../src/persistence/encodeProject';
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

/** Damaged project files: half of them damaged as text, half in their values. */
export const fuzzProjects = (count: number, seed: number, begin?: (number: number) => void): FuzzRun => {
  const files = samples();
  const file = (number: number): string => {
    const chance = dice(seed + number);
    const sample = chance.of(files) ?? '';
    return number % 2 === 0 ? damagedText(sample, chance.of(files) ?? '', chance) : damagedJson(sample, chance);
  };
  return fuzzRun(count, file, decodeProject, wrongProject, begin);
};
