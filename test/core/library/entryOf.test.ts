import { describe, expect, it } from 'vitest';
import { newBuild } from '../../../src/core/document/newBuild';
import type { Project } from '../../../src/core/document/types';
import { demoProject } from '../../../src/core/kinds/demo';
import { entryOf } from '../../../src/core/library/entryOf';
import { steelProject } from '../document/steelProject';

const MORNING = '2026-03-01T09:00:00.000Z';

describe('entryOf', () => {
  it('tells of a model what the library shows; the scale is twice the mean of its readings: 2 (316 + 316.1 + 315.9) / 3', () => {
    const { scale, ...entry } = entryOf(demoProject('demo', MORNING), false);
    expect(scale).toBeCloseTo(632, 9);
    expect(entry).toEqual({
      id: 'demo',
      revision: 0,
      name: 'Wren 14',
      serial: null,
      parent: null,
      hand: 'right',
      shape: 'belly',
      strings: 6,
      kind: 'steel',
      words: '',
      pictures: [],
      created: MORNING,
      changed: MORNING,
      archived: false,
    });
  });

  it('tells of an instrument its number, what it was made from, and the words that it is found by', () => {
    const project: Project = {
      ...steelProject,
      about: { ...steelProject.about, notes: 'For the fair', parent: { id: 'model', revision: 4 }, pictures: ['p'] },
      build: {
        ...newBuild(),
        serial: 'No. 12',
        woods: [{ id: 'w1', part: 'bridge', species: 'Dalbergia latifolia', origin: 'Kerala' }],
      },
    };
    const entry = entryOf(project, true);
    expect(entry).toMatchObject({ serial: 'No. 12', parent: 'model', pictures: ['p'], archived: true });
    expect(entry.words.split('\n')).toEqual(['For the fair', 'bridge', 'Dalbergia latifolia', 'Kerala']);
  });

  it('has no scale while the readings give none, and names an outline that is drawn', () => {
    const scale = { from: 'readings' as const, entered: 632, readings: [] };
    const path = { start: { x: 0, y: 0 }, segments: [], closed: true };
    const project: Project = {
      ...steelProject,
      instrument: { ...steelProject.instrument, scale },
      bridge: { ...steelProject.bridge, outline: { kind: 'drawn', path, symmetric: false } },
    };
    expect(entryOf(project, false)).toMatchObject({ scale: null, shape: 'drawn' });
  });
});
