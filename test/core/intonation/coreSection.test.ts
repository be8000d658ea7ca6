import { describe, expect, it } from 'vitest';
import { coreSection } from '../../../src/core/intonation/coreSection';

describe('coreSection', () => {
  // Common mechanics tables: hexagon across flats w, A = 0.8660 w², I = 0.06014 w⁴; circle π/4·D², π/64·D⁴.
  it('of a hexagon', () => {
    expect(coreSection(1, 'hex').area).toBeCloseTo(0.866, 4);
    expect(coreSection(1, 'hex').secondMoment).toBeCloseTo(0.06014, 5);
  });
  it('of a circle', () => {
    expect(coreSection(3, 'round').area).toBeCloseTo(7.06858, 5);
    expect(coreSection(3, 'round').secondMoment).toBeCloseTo(3.97608, 5);
  });
  // E·A = 14.59 kN and E·I = 84.7 N·mm² for .012 in of steel at 200 GPa: hand arithmetic.
  it('of a .012 in string', () => {
    expect(coreSection(0.3048, 'round').area * 200).toBeCloseTo(14.59, 2);
    expect(coreSection(0.3048, 'round').secondMoment * 2e5).toBeCloseTo(84.7, 1);
  });
  it.each([0, -1, Number.NaN])('refuses %s', (size) => expect(() => coreSection(size, 'round')).toThrow(RangeError));
});
