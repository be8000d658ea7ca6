import { describe, expect, it } from 'vitest';
import { demoProject } from '../../../src/core/kinds/demo';
import { decodeProject } from '../../../src/persistence/decodeProject';
import { encodeProject } from '../../../src/persistence/encodeProject';
import { readModels } from '../../../src/ui/print/sets/readModels';

const demo = demoProject('demo', '2026-01-01T00:00:00.000Z');

describe('readModels', () => {
  it('takes the files that are models, and names the others with the reason', async () => {
    const files = [
      new File([encodeProject(demo)], 'wren.json'),
      new File(['{"format":"other"}'], 'other.json'),
      new File([encodeProject({ ...demo, about: { ...demo.about, name: 'Second' } })], 'second.json'),
    ];
    const { models, problems } = await readModels(files, decodeProject);
    expect(models.map(({ about }) => about.name)).toEqual(['Wren 14', 'Second']);
    expect(problems).toEqual([expect.stringMatching(/^other\.json: ./)]);
  });

  it('goes on when a file cannot be read at all', async () => {
    const gone = { name: 'gone.json', slice: () => ({ text: () => Promise.reject(new Error('it is gone')) }) as never };
    const { models, problems } = await readModels([gone, new File([encodeProject(demo)], 'wren.json')], decodeProject);
    expect(models).toHaveLength(1);
    expect(problems).toEqual(['gone.json: it is gone']);
  });
});
