import { describe, expect, it } from 'vitest';
import { LARGER_PAPERS, PAPERS } from '../../../src/core/sheets/papers';
import { ISO_216_MM, US_POINTS } from '../../reference/papers';

const byId = new Map([...PAPERS, ...LARGER_PAPERS].map((paper) => [paper.id, paper]));

describe('papers', () => {
  it.each(Object.entries(ISO_216_MM))('%s is as ISO 216 has it', (id, [width, height]) => {
    expect(byId.get(id)).toMatchObject({ width, height });
  });

  it.each(Object.entries(US_POINTS))('%s is a whole number of points', (id, [width, height]) => {
    expect(((byId.get(id)?.width ?? 0) / 25.4) * 72).toBeCloseTo(width, 9);
    expect(((byId.get(id)?.height ?? 0) / 25.4) * 72).toBeCloseTo(height, 9);
  });

  it('to print on are A4 and Letter', () => expect(PAPERS.map(({ name }) => name)).toEqual(['A4', 'Letter']));
});
