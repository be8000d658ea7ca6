import { describe, expect, it } from 'vitest';
import { fuzzDrawings } from '../run/torture/fuzzDrawings';
import { refusalOf } from './foundBox';

describe('damaged drawing files', () => {
  it.each([
    ['svg', 1101],
    ['dxf', 2202],
  ] as const)('200 of %s: a message, or outlines that can be worked with and kept', (kind, seed) => {
    const { taken, refused, faults } = fuzzDrawings(kind, 200, seed);
    expect(faults).toEqual([]);
    // Damage that is always seen, or never, would try nothing.
    expect(Math.min(taken, refused)).toBeGreaterThan(20);
  });

  // Found by more of them: at 150 mm for its height of 2e-17 px, the line would lie 1e21 mm off.
  it('a drawing made tiny by its viewBox, far from where it is seen, is told as empty', () => {
    const file =
      '<svg xmlns="http://www.w3.org/2000/svg" width="600px" height="200px" viewBox="0 0 600 1e21"><path d="M0 0V90H400"/></svg>';
    for (const scale of [{ by: 'length', longest: 150 }, { by: 'file' }] as const)
      expect(refusalOf(file, scale).code).toBe('import.empty');
  });
});
