import { describe, expect, it } from 'vitest';
import { newBuild } from '../../../src/core/document/newBuild';
import type { Project } from '../../../src/core/document/types';
import { demoProject } from '../../../src/core/kinds/demo';
import { KINDS } from '../../../src/core/kinds/kinds';
import { compareProjects } from '../../../src/core/library/compareProjects';
import { COMMANDS } from '../../store/random/commandTable';
import { dice } from '../../store/random/dice';

const MORNING = '2026-03-01T09:00:00.000Z';
const demo = demoProject('demo', MORNING);

/** What differs, in short: the part, the name and both values. */
const told = (other: Project, one = demo) =>
  compareProjects(one, other).map(({ part, label, one: mine, other: theirs }) => [part, label, mine, theirs]);

describe('compareProjects', () => {
  it('finds nothing between a project and itself under another id, revision and date', () => {
    const about = { ...demo.about, changed: '2027-01-01T00:00:00Z', parent: { id: 'x', revision: 1 } };
    expect(told({ ...demo, id: 'other', revision: 9, about })).toEqual([]);
  });

  it('tells fields by their names, with both values as they are saved', () => {
    const widths = { ...demo.instrument.widths, nut: 44.5 };
    expect(told({ ...demo, instrument: { ...demo.instrument, widths, hand: 'left' } })).toEqual([
      ['Instrument', 'Hand', 'right', 'left'],
      ['Instrument', 'Nut width', 46, 44.5],
    ]);
  });

  it('tells readings one by one', () => {
    const scale = { ...demo.instrument.scale, readings: demo.instrument.scale.readings.slice(0, 2) };
    expect(told({ ...demo, instrument: { ...demo.instrument, scale } })).toEqual([
      ['Instrument', 'Nut to 12th fret, 3rd reading', 315.9, null],
    ]);
  });

  it('tells a group that only one has as one', () => {
    expect(told({ ...demo, bridge: { ...demo.bridge, pins: null } })).toEqual([
      ['Bridge', 'Bridge pins', 'there', 'none'],
    ]);
    expect(told({ ...demo, build: { ...newBuild(), serial: 'No. 12' } })).toEqual([
      ['This instrument', 'This instrument', 'a model', 'one instrument'],
    ]);
    const path = { start: { x: 0, y: 0 }, segments: [{ kind: 'line' as const, to: { x: 1, y: 0 } }], closed: true };
    const outline = { kind: 'drawn' as const, path, symmetric: false };
    expect(told({ ...demo, bridge: { ...demo.bridge, outline } })).toEqual([
      ['Bridge', 'Outline', 'Belly, toward the tail', 'drawn freely'],
    ]);
  });

  it('tells a string that only one has by its number and name', () => {
    expect(told({ ...demo, strings: demo.strings.slice(0, 5) }).slice(0, 1)).toEqual([
      ['Strings', 'String 6', demo.strings[5]?.name, 'none'],
    ]);
  });

  it('counts what has no field of its own', () => {
    const woods = [{ id: 'w1', part: 'top', species: 'Picea', origin: '' }];
    const [one, other] = [
      { ...demo, build: newBuild() },
      { ...demo, build: { ...newBuild(), woods } },
    ];
    expect(told(other, one).at(-1)).toEqual(['This instrument', 'Woods', 'none', '1']);
    expect(told({ ...demo, about: { ...demo.about, pictures: ['a', 'b'] } })).toEqual([
      ['Name and notes', 'Photos', 'none', '2'],
    ]);
  });

  it('says that two are not the same where a count would not', () => {
    const with1 = { ...demo, about: { ...demo.about, pictures: ['a'] } };
    const with2 = { ...demo, about: { ...demo.about, pictures: ['b'] } };
    expect(told(with2, with1)).toEqual([['Name and notes', 'Photos', '1', '1, but not the same']]);
  });

  it.each(KINDS.map(({ name, make }) => [name, make('kind', MORNING)] as const))(
    'finds whatever any command changed of a %s, and names it',
    (_, start) => {
      const chance = dice(11);
      let project = start;
      for (const [name, row] of [...Object.entries(COMMANDS), ...Object.entries(COMMANDS)]) {
        const result = row(project, chance)(project);
        if (!result.ok) continue;
        const { id, about, ...content } = result.value;
        const same = JSON.stringify({ ...content, name: about.name, notes: about.notes, pictures: about.pictures });
        const { id: __, about: was, ...former } = project;
        const before = JSON.stringify({ ...former, name: was.name, notes: was.notes, pictures: was.pictures });
        const found = compareProjects(project, result.value);
        expect(found.length > 0, `${name} ${id}`).toBe(same !== before);
        expect(
          found.filter(({ part, label, one, other }) => part === 'Other' || label === '' || one === other),
          name,
        ).toEqual([]);
        project = result.value;
      }
    },
  );
});
