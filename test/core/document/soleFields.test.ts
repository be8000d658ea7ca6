import { describe, expect, it } from 'vitest';
import { allFields, fieldAt } from '../../../src/core/document/fieldAt';
import { validateProject } from '../../../src/core/document/validateProject';
import { FLAT_SOLE } from '../height/sole/soleCase';
import { steelProject, steelWith } from './steelProject';

const leaves = (value: unknown, path: string): readonly string[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, child]) => leaves(child, `${path}.${key}`))
    : [path];

const soled = steelWith({ bridge: { sole: FLAT_SOLE } });

describe('the rows of the sole', () => {
  it('are one for every figure of it, each with its own label', () => {
    const rows = allFields(soled);
    const paths = rows.map(({ path }) => path).filter((path) => path.startsWith('bridge.sole.'));
    expect([...paths].sort()).toEqual([...leaves(FLAT_SOLE, 'bridge.sole')].sort());
    expect(new Set(rows.map(({ label }) => label)).size).toBe(rows.length);
    for (const name of ['wingGap', 'centreGap', 'saddlePlay', 'saddleClearance'])
      expect(fieldAt(soled, `limits.${name}`)).toMatchObject({ kind: 'length', optional: true });
  });

  it('are none without one', () => {
    expect(allFields(steelProject).some(({ path }) => path.startsWith('bridge.sole.'))).toBe(false);
    expect(fieldAt(steelProject, 'bridge.sole.wing.tip')).toBeNull();
  });

  it('judge a file', () => {
    expect(validateProject(soled)).toEqual([]);
    const thin = steelWith({ bridge: { sole: { ...FLAT_SOLE, wing: { ...FLAT_SOLE.wing, tip: 0 } } } });
    expect(validateProject(thin).map(({ path, code }) => [path, code])).toEqual([
      ['bridge.sole.wing.tip', 'field.range'],
    ]);
  });
});
