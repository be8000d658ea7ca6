import { describe, expect, it } from 'vitest';
import { equilibriumMoisture } from '../../../src/core/glue/equilibriumMoisture';
import { GRAIN_COEFFICIENTS } from '../../../src/core/glue/grainCoefficients';
import { grainMovement } from '../../../src/core/glue/grainMovement';
import { coefficientOf, USUAL_MOVEMENT } from '../../../src/core/glue/usualMovement';
import { vacuumPressure } from '../../../src/core/glue/vacuumPressure';
import { GRAIN_TABLE, SITKA_CHECK, VACUUM_CHECK } from '../../reference/wood';

describe('movement across the grain', () => {
  it('has the handbook’s figures', () => {
    expect(GRAIN_COEFFICIENTS.map(({ name, radial, tangential }) => [name, radial, tangential])).toEqual(GRAIN_TABLE);
  });

  it('of 100 mm of Sitka spruce is as worked by hand', () => {
    const { width, fromSixToTen, air } = SITKA_CHECK;
    const [from, to] = [air.from, air.to].map((humidity) => equilibriumMoisture(air.celsius, humidity));
    expect((to ?? 0) - (from ?? 0)).toBeCloseTo(air.moisture, 3);
    for (const cut of ['radial', 'tangential'] as const) {
      const coefficient = coefficientOf(USUAL_MOVEMENT.top, cut) ?? 0;
      expect(grainMovement(width, coefficient, 6, 10)).toBeCloseTo(fromSixToTen[cut], 3);
      expect(grainMovement(width, coefficient, 10, 6)).toBeCloseTo(-fromSixToTen[cut], 3);
      expect(grainMovement(width, coefficient, from ?? 0, to ?? 0)).toBeCloseTo(air[cut], 3);
    }
  });

  it('is not known of a wood that is not in the table until the maker gives a figure', () => {
    expect(coefficientOf(USUAL_MOVEMENT.bridge, 'radial')).toBeNull();
    expect(coefficientOf({ wood: '', radial: 0.002, tangential: null }, 'radial')).toBe(0.002);
    expect(coefficientOf({ wood: 'mahogany', radial: 0.002, tangential: null }, 'radial')).toBe(0.002);
    expect(coefficientOf({ wood: 'mahogany', radial: 0.002, tangential: null }, 'tangential')).toBe(0.00238);
  });

  it('refuses what is no width or moisture', () => {
    expect(() => grainMovement(-1, 0.001, 6, 10)).toThrow(RangeError);
    expect(() => grainMovement(100, 0.001, 6, Number.NaN)).toThrow(RangeError);
  });
});

describe('vacuum', () => {
  it.each(VACUUM_CHECK)('of $inHg inHg presses with $psi psi', ({ inHg, psi }) => {
    expect(Math.abs(vacuumPressure(inHg) - psi)).toBeLessThan(0.05);
  });

  it('refuses more than there is air', () => {
    expect(() => vacuumPressure(31)).toThrow(RangeError);
    expect(() => vacuumPressure(Number.NaN)).toThrow(RangeError);
  });
});
