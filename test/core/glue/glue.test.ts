import { describe, expect, it } from 'vitest';
import { clampForce } from '../../../src/core/glue/clampForce';
import { equilibriumMoisture } from '../../../src/core/glue/equilibriumMoisture';
import { EMC_ANCHORS, EMC_TABLE, GLUE_CHECK } from '../../reference/wood';

describe('clampForce', () => {
  it('gives the worked figure', () => {
    const force = clampForce(GLUE_CHECK.area, GLUE_CHECK.psi);
    expect(force.newton).toBeCloseTo(GLUE_CHECK.newton, 1);
    expect(force.lbf).toBeCloseTo(GLUE_CHECK.lbf, 1);
  });

  it('is nothing without pressure, and refuses what is no area', () => {
    expect(clampForce(4420, 0)).toEqual({ newton: 0, lbf: 0 });
    expect(() => clampForce(-1, 100)).toThrow(RangeError);
    expect(() => clampForce(100, Number.NaN)).toThrow(RangeError);
  });
});

describe('equilibriumMoisture', () => {
  it.each(
    EMC_TABLE.rows.flatMap(({ celsius, percent }) =>
      percent.map((moisture, k) => ({ celsius, humidity: EMC_TABLE.humidities[k] ?? 0, moisture })),
    ),
  )('$celsius °C at $humidity % gives $moisture %', ({ celsius, humidity, moisture }) => {
    expect(Math.abs(equilibriumMoisture(celsius, humidity) - moisture)).toBeLessThan(0.01);
  });

  it.each(EMC_ANCHORS)('$celsius °C at $humidity %: $percent, $source', ({ celsius, humidity, percent, within }) => {
    expect(Math.abs(equilibriumMoisture(celsius, humidity) - percent)).toBeLessThanOrEqual(within);
  });

  it('refuses air that is none', () => {
    expect(equilibriumMoisture(20, 0)).toBe(0);
    expect(() => equilibriumMoisture(20, 101)).toThrow(RangeError);
    expect(() => equilibriumMoisture(Number.NaN, 50)).toThrow(RangeError);
  });
});
