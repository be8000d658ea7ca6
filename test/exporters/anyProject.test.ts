import fc from 'fast-check';
import { expect, it } from 'vitest';
import { createDerive } from '../../src/core/derive/createDerive';
import { makeDxf } from '../../src/exporters/dxf/makeDxf';
import { makeSvg } from '../../src/exporters/svg/makeSvg';
import { anyProject } from '../core/derive/randomProject';
import { wholeDrawing } from './wholeDrawing';

it('whatever the fields hold, a bridge that is drawn becomes a file, and one that is not says why', async () => {
  let drawn = 0;
  await fc.assert(
    fc.asyncProperty(anyProject, async (project) => {
      const items = await wholeDrawing(project);
      const files = [
        makeSvg({ title: project.about.name, description: '', items }),
        makeDxf({ items }, '2007'),
        makeDxf({ items }, 'R12'),
      ];
      const there = createDerive()(project).placement.ok;
      if (there) drawn += 1;
      for (const file of files) {
        expect(file.ok || !there).toBe(true);
        if (file.ok) expect(file.value).not.toMatch(/NaN|Infinity|undefined/);
      }
    }),
    { seed: 20261125, numRuns: 150 },
  );
  expect(drawn).toBeGreaterThan(5);
});
