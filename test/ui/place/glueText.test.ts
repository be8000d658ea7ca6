import { describe, expect, it } from 'vitest';
import { fieldAt } from '../../../src/core/document/fieldAt';
import type { Field } from '../../../src/core/document/fieldTypes';
import type { LengthStyle } from '../../../src/core/units/formatLength';
import { forceRange, forceText, psiText } from '../../../src/ui/place/glue/forceText';
import { glueText, glueUnit, readGlue } from '../../../src/ui/place/glue/glueText';
import { steelProject } from '../../core/document/steelProject';
import { valueOf as answerOf, codesOf } from '../../core/document/valueOf';
import { GLUE_CHECK } from '../../reference/wood';

const MM: LengthStyle = { unit: 'mm', decimals: 1 };
const INCH: LengthStyle = { unit: 'in', denominator: 64 };

const field = (path: string): Field => {
  const found = fieldAt(steelProject, `build.${path}`);
  if (found === null) throw new Error(`There is no ${path}.`);
  return found;
};

describe('boxes of the glue card', () => {
  it('show temperature in the degrees of those who read it, and take either', () => {
    const air = field('shop.celsius');
    expect([glueUnit(air, MM), glueUnit(air, INCH)]).toEqual(['°C', '°F']);
    // 70 °F is 21.1 °C.
    expect(glueText(air, 21.1111, INCH)).toBe('70');
    expect(glueText(air, 21.1111, MM)).toBe('21.1');
    expect(answerOf(readGlue(air, '70', INCH))).toBeCloseTo(21.1111, 4);
    expect(answerOf(readGlue(air, '70 F', MM))).toBeCloseTo(21.1111, 4);
    expect(codesOf(readGlue(air, '', MM))).toEqual(['temperature.wrong']);
  });

  it('take times with their unit, and may be empty', () => {
    expect(answerOf(readGlue(field('glue.times.open'), '5', MM))).toBe(5);
    expect(codesOf(readGlue(field('glue.times.cure'), '24', MM))).toEqual(['time.unit']);
    expect(answerOf(readGlue(field('glue.times.cure'), '24 h', MM))).toBe(1440);
    expect(answerOf(readGlue(field('glue.times.cure'), ' ', MM))).toBeNull();
    expect(glueText(field('glue.times.cure'), 1440, MM)).toBe('24 h');
    expect(glueText(field('glue.times.cure'), null, MM)).toBe('');
  });

  it('take pressure, percent, lengths and words', () => {
    expect(answerOf(readGlue(field('glue.pressure'), '1 MPa', MM))).toBeCloseTo(145.038, 2);
    expect(answerOf(readGlue(field('shop.humidity'), '45 %', MM))).toBe(45);
    expect(answerOf(readGlue(field('glue.reach'), '8 in', MM))).toBeCloseTo(203.2, 9);
    expect(answerOf(readGlue(field('glue.adhesive'), ' fish ', MM))).toBe('fish');
    expect(answerOf(readGlue(field('movement.bridge.radial'), '0.2', MM))).toBeCloseTo(0.002, 12);
    expect(glueText(field('movement.bridge.radial'), 0.00148, MM)).toBe('0.148');
  });
});

describe('forces in words', () => {
  it('are whole, in both units', () => {
    const { newton, lbf } = GLUE_CHECK;
    expect(forceText({ newton, lbf: lbf + 0.2 })).toBe('3103 N · 698 lbf');
  });

  it('keep the tenth of a vacuum, which is all it has', () => {
    expect(psiText({ least: 9.823, most: 12.279 })).toBe('9.8 to 12.3');
    expect(psiText({ least: 100, most: 247 })).toBe('100 to 247');
    // 3000 mm² at 150 psi: 3102.6 N, 697.5 lbf; at half of it half.
    expect(forceRange(GLUE_CHECK.area, { least: 75, most: 150 })).toEqual({
      newton: '1551 to 3103 N',
      lbf: '349 to 698 lbf',
    });
  });
});
