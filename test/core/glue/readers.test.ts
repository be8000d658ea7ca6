import { describe, expect, it } from 'vitest';
import { readMinutes } from '../../../src/core/glue/readMinutes';
import { readPressure } from '../../../src/core/glue/readPressure';
import { fahrenheitOf, readTemperature } from '../../../src/core/glue/readTemperature';
import { showMinutes } from '../../../src/core/glue/showMinutes';
import { valueOf as answerOf, codesOf } from '../document/valueOf';

describe('times of a label', () => {
  it.each([
    ['5', 5],
    ['5 min', 5],
    ['5 minutes', 5],
    ['2,5 m', 2.5],
    ['24 h', 1440],
    ['1 hour', 60],
    ['1.5 hours', 90],
    ['1 h 30', 90],
    ['1 h 30 min', 90],
    ['3 days', 4320],
  ] as const)('%s is %d minutes', (text, minutes) => expect(answerOf(readMinutes(text, true))).toBe(minutes));

  it('asks for a unit where hours are as likely', () => {
    expect(codesOf(readMinutes('24', false))).toEqual(['time.unit']);
    expect(answerOf(readMinutes('24 h', false))).toBe(1440);
  });

  it.each(['', 'soon', '-5 min', '5 kg', '1:30', '5 min or so'])('refuses “%s”', (text) =>
    expect(codesOf(readMinutes(text, true))).toEqual(['time.wrong']),
  );

  it.each([
    [5, '5 min'],
    [2.5, '2.5 min'],
    [60, '1 h'],
    [90, '1 h 30 min'],
    [1440, '24 h'],
  ] as const)('%d minutes are shown as %s, and read again', (minutes, text) => {
    expect(showMinutes(minutes)).toBe(text);
    expect(answerOf(readMinutes(text, false))).toBe(minutes);
  });
});

// Fixed points of the scales: 0 °C = 32 °F, 100 °C = 212 °F, −40 both; 70 °F = 21.1 °C.
describe('temperature', () => {
  it.each([
    ['21', 'C', 21],
    ['70 °F', 'C', 21.1111],
    ['70', 'F', 21.1111],
    ['21,5 °C', 'F', 21.5],
    ['-40f', 'C', -40],
    ['−40', 'F', -40],
    ['212 F', 'C', 100],
  ] as const)('%s in °%s is %d °C', (text, unit, celsius) =>
    expect(answerOf(readTemperature(text, unit))).toBeCloseTo(celsius, 4),
  );

  it('is shown in °F as well', () => {
    expect(fahrenheitOf(100)).toBeCloseTo(212, 9);
    expect(fahrenheitOf(0)).toBe(32);
  });

  it.each(['', 'warm', '20 K', '1/2'])('refuses “%s”', (text) =>
    expect(codesOf(readTemperature(text, 'C'))).toEqual(['temperature.wrong']),
  );
});

// 1 MPa = 145.038 psi and 1 bar = 14.5038 psi: NIST SP 811, appendix B.8, rounded.
describe('pressure', () => {
  it.each([
    ['150', 150],
    ['150 psi', 150],
    ['1 MPa', 145.038],
    ['1 N/mm²', 145.038],
    ['0,7 N/mm2', 101.526],
    ['100 kPa', 14.5038],
    ['10 bar', 145.038],
  ] as const)('%s is %d psi', (text, psi) => expect(answerOf(readPressure(text))).toBeCloseTo(psi, 2));

  it.each(['', 'tight', '-5', '5 kg'])('refuses “%s”', (text) =>
    expect(codesOf(readPressure(text))).toEqual(['pressure.wrong']),
  );
});
