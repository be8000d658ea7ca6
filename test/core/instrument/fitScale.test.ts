import { describe, expect, it } from 'vitest';
import { fitScale } from '../../../src/core/instrument/fitScale';
import { READ_IN_64THS } from '../../reference/bench';
import { PITCH } from '../../reference/pitch';
import { valueOf as answerOf, codesOf } from '../document/valueOf';

const at12 = (value: number, sigma = 0.25) => ({ fret: 12, value, sigma });

describe('fitScale, readings to one fret', () => {
  it('takes twice the mean of readings to the 12th fret', () => {
    const fit = answerOf(fitScale(READ_IN_64THS.inches.map((inches) => at12(inches * 25.4))));
    expect(fit.scaleLength / 25.4 / 2).toBeCloseTo(READ_IN_64THS.meanInches, 5);
    expect(fit.scaleLength / 25.4).toBeCloseTo(READ_IN_64THS.scaleInches, 5);
    expect(fit.scaleLength).toBeCloseTo(READ_IN_64THS.scale, 3);
    expect(fit.nutOffset).toBe(0);
    expect(fit.sigma.nutOffset).toBe(0);
  });

  // By hand: weights 16, 16, 4; mean (16·322 + 16·323 + 4·324) / 36 = 322.6667; doubt of the mean 1/√36, of the scale twice that.
  it('weighs readings by their doubt', () => {
    const fit = answerOf(fitScale([at12(322), at12(323), at12(324, 0.5)]));
    expect(fit.scaleLength).toBeCloseTo(645.333333, 6);
    expect(fit.sigma.scaleLength).toBeCloseTo(1 / 3, 12);
    expect(fit.residuals[0]).toBeCloseTo(-2 / 3, 10);
    expect(fit.residuals[2]).toBeCloseTo(4 / 3, 10);
  });

  it('needs but one reading', () => {
    expect(answerOf(fitScale([{ fret: 1, value: 650 / PITCH.rule, sigma: 0.1 }])).scaleLength).toBeCloseTo(650, 8);
  });
});

describe('fitScale, readings to several frets', () => {
  // A board of 640 whose nut end lost 0.4: 320 − 0.4, 480 − 0.4, and 640 · (1 − 1.0594630943593⁻⁵) − 0.4.
  it('finds scale and nut offset of a made-up board', () => {
    const fit = answerOf(
      fitScale([
        { fret: 12, value: 319.6, sigma: 0.25 },
        { fret: 24, value: 479.6, sigma: 0.1 },
        { fret: 5, value: 640 * (1 - PITCH.semitone ** -5) - 0.4, sigma: 0.3 },
      ]),
    );
    expect(fit.scaleLength).toBeCloseTo(640, 8);
    expect(fit.nutOffset).toBeCloseTo(-0.4, 8);
    for (const residual of fit.residuals) expect(residual).toBeCloseTo(0, 8);
  });

  // Two readings to the 12th and 24th: scale = 4·(v24 − v12), offset = 3·v12 − 2·v24, so by the propagation of doubt
  // (JCGM 100:2008, 5.1.2) σ = 0.25·4·√2 and 0.25·√13.
  it('gives the doubt that the two-fret solution carries', () => {
    const fit = answerOf(fitScale([at12(320.1), { fret: 24, value: 480.3, sigma: 0.25 }]));
    expect(fit.scaleLength).toBeCloseTo(640.8, 10);
    expect(fit.nutOffset).toBeCloseTo(-0.3, 10);
    expect(fit.sigma.scaleLength).toBeCloseTo(Math.SQRT2, 8);
    expect(fit.sigma.nutOffset).toBeCloseTo(0.90138782, 8);
  });
});

describe('fitScale refuses', () => {
  it.each([
    ['no reading', [], 'scale.none'],
    ['fret 0', [{ fret: 0, value: 300, sigma: 1 }], 'scale.fret'],
    ['a fret that is no number', [{ fret: Number.NaN, value: 300, sigma: 1 }], 'scale.fret'],
    ['a length of 0', [{ fret: 12, value: 0, sigma: 1 }], 'scale.value'],
    ['an endless length', [{ fret: 12, value: Number.POSITIVE_INFINITY, sigma: 1 }], 'scale.value'],
    ['no doubt at all', [{ fret: 12, value: 300, sigma: 0 }], 'scale.sigma'],
  ])('%s', (_, readings, code) => {
    expect(codesOf(fitScale(readings))).toEqual([code]);
  });
});
