import { describe, expect, it } from 'vitest';
import { allFields, fieldAt } from '../../../src/core/document/fieldAt';
import { newBuild } from '../../../src/core/document/newBuild';
import type { Project } from '../../../src/core/document/types';
import { newGlue } from '../../../src/core/glue/newGlue';
import { steelProject } from './steelProject';

const air = { celsius: 20, humidity: 45 };
const grain = { wood: '', radial: 0.002, tangential: null };
const build = {
  ...newBuild(),
  glue: { ...newGlue(), clamps: [{ x: 0, y: 15 }] },
  shop: air,
  kept: air,
  movement: { top: grain, bridge: grain },
};
const whole: Project = { ...steelProject, build };

const leaves = (value: unknown, path: string): readonly string[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, child]) => leaves(child, `${path}.${key}`))
    : [path];

describe('fields of glue, air and grain', () => {
  it('are all of their figures', () => {
    const { glue, shop, kept, movement } = build;
    const paths = leaves({ glue, shop, kept, movement }, 'build').filter((path) => !path.endsWith('.wood'));
    expect(allFields(whole).filter(({ path }) => paths.includes(path))).toHaveLength(paths.length);
    for (const path of paths) expect(fieldAt(whole, path)?.help ?? '').toMatch(/^[A-Z].*\.$/);
  });

  it('can be typed before anything was begun, and belong to the project only then', () => {
    expect(fieldAt(steelProject, 'build.glue.times.open')?.label).toBe('Open time');
    expect(fieldAt(steelProject, 'build.glue.clamps.0.x')).toBeNull();
    expect(allFields(steelProject).some(({ path }) => path.startsWith('build.'))).toBe(false);
  });
});
