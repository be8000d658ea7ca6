import { describe, expect, it } from 'vitest';
import { PAPERS, papersThatDo } from '../../../src/core/sheets/papers';
import { ISO_216_MM, US_POINTS } from '../../reference/papers';

const byId = new Map(PAPERS.map((paper) => [paper.id, paper]));

describe('papers', () => {
  it.each(Object.entries(ISO_216_MM))('%s is as ISO 216 has it', (id, [width, height]) => {
    expect(byId.get(id)).toMatchObject({ width, height });
  });

  it.each(Object.entries(US_POINTS))('%s is a whole number of points', (id, [width, height]) => {
    expect(((byId.get(id)?.width ?? 0) / 25.4) * 72).toBeCloseTo(width, 9);
    expect(((byId.get(id)?.height ?? 0) / 25.4) * 72).toBeCloseTo(height, 9);
  });

  it('are all told with their source, and no other', () =>
    expect([...byId.keys()].sort()).toEqual([...Object.keys(ISO_216_MM), ...Object.keys(US_POINTS)].sort()));

  it('that would do are named the smallest first, three at most', () => {
    expect(papersThatDo(({ height }) => height > 297)).toBe('Legal, Tabloid, A3');
    expect(papersThatDo(({ height }) => height > 1100)).toBe('ANSI E, A0');
    expect(papersThatDo(() => false)).toBe('');
  });
});
