import { studentT } from '../numeric/studentT';
import { ok, type Result } from '../result';
import { fitScale } from './fitScale';
import type { ReadingDoubt, SurveyFit, SurveyReading } from './surveyTypes';

/** From here on the readings' own scatter has a say; with fewer beyond the unknowns it is too poorly known. */
const LEAST_DEGREES = 2;

const RULE =
  'The doubt of one reading is the one stated for the rule, times 1.96. Once at least two readings more than the fit needs are there, their scatter times Student’s t is taken where that is more.';

/** The doubt of one reading: the larger of what the rule allows and what the readings show, both at 95 %. */
const readingDoubt = (residuals: readonly number[], unknowns: number, ruleDoubt: number): ReadingDoubt => {
  const degreesOfFreedom = residuals.length - unknowns;
  const byRule = studentT(0.95, Number.POSITIVE_INFINITY);
  if (degreesOfFreedom >= LEAST_DEGREES) {
    const sigma = Math.sqrt(residuals.reduce((sum, each) => sum + each * each, 0) / degreesOfFreedom);
    const factor = studentT(0.95, degreesOfFreedom);
    if (factor * sigma > byRule * ruleDoubt) return { from: 'scatter', sigma, factor, degreesOfFreedom, rule: RULE };
  }
  return { from: 'rule', sigma: ruleDoubt, factor: byRule, degreesOfFreedom, rule: RULE };
};

/**
 * Scale length and nut offset by least squares with their ± at 95 %, and the residuals, mm. Student's t for the fit's
 * degrees of freedom: GUM (JCGM 100:2008) annex G.3. Codes: as fitScale.
 */
export const surveyFit = (
  readings: readonly SurveyReading[],
  ruleDoubt: number,
): Result<{ readonly fit: SurveyFit; readonly residuals: readonly number[] }> => {
  // Like sigmas of 1: the fit's own sigmas are then the factors from one reading's doubt to theirs.
  const line = fitScale(readings.map(({ fret, value }) => ({ fret, value, sigma: 1 })));
  if (!line.ok) return line;
  const { scaleLength, nutOffset, sigma, residuals } = line.value;
  const oneFret = readings.every(({ fret }) => fret === readings[0]?.fret);
  const doubt = readingDoubt(residuals, oneFret ? 1 : 2, ruleDoubt);
  const half = doubt.factor * doubt.sigma;
  return ok({
    fit: {
      scaleLength: { value: scaleLength, plusMinus: half * sigma.scaleLength },
      nutOffset: { value: nutOffset, plusMinus: oneFret ? null : half * sigma.nutOffset },
      doubt,
    },
    residuals,
  });
};
