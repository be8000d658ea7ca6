import { failed, type Issue, issue, ok, type Result } from '../result';
import { fretGroups } from './fretGroups';
import { strayFrets } from './strayFrets';
import { noiseWithin, strayReadings } from './strayReadings';
import { surveyFit } from './surveyFit';
import type { FretSurvey, SurveyFinding, SurveyReading } from './surveyTypes';

const MOST_READINGS = 30;
const HIGHEST_FRET = 36; // three octaves; above any fretboard

const problems = (readings: readonly SurveyReading[], ruleDoubt: number): readonly Issue[] => [
  ...(readings.length >= 1 && readings.length <= MOST_READINGS
    ? []
    : [issue('', 'survey.count', `Expected 1 to ${MOST_READINGS} readings, got ${readings.length}.`)]),
  ...(ruleDoubt > 0 && Number.isFinite(ruleDoubt)
    ? []
    : [issue('ruleDoubt', 'survey.doubt', `Expected the doubt of one reading above 0, got ${ruleDoubt}.`)]),
  ...readings.flatMap(({ fret, value }, index) => [
    ...(Number.isInteger(fret) && fret >= 1 && fret <= HIGHEST_FRET
      ? []
      : [issue(`${index}.fret`, 'survey.fret', `Expected a whole fret from 1 to ${HIGHEST_FRET}, got ${fret}.`)]),
    ...(value > 0 && Number.isFinite(value)
      ? []
      : [issue(`${index}.value`, 'survey.value', `Expected a length above 0, got ${value}.`)]),
  ]),
];

/** Places of the readings that a finding speaks against for certain. */
const namedBy = (finding: SurveyFinding, readings: readonly SurveyReading[]): readonly number[] => {
  switch (finding.kind) {
    case 'reading':
      return [finding.index];
    case 'pair':
      return finding.indices;
    case 'fret':
      return finding.instead.length > 0
        ? []
        : [...readings.keys()].filter((index) => readings[index]?.fret === finding.fret);
  }
};

/**
 * The board's true scale and its nut offset from rule readings, nut datum to fret crown: each ± at 95 %, what each reading
 * misses by, and which reading or fret does not belong. All readings count in the fit itself; `cleared` leaves out what
 * the findings name. Readings to one fret alone leave the offset at 0.
 *
 * Strays are judged by the rule's doubt, or by the scatter within frets where that is more, so that sound readings raise a
 * false alarm once in twenty surveys.
 * @param options.ruleDoubt doubt of one reading, one sigma, mm
 *
 * Codes: survey.count (1 to 30 readings), survey.doubt, survey.fret, survey.value, survey.order (the readings shrink as the
 * frets rise).
 */
export const fretSurvey = (
  readings: readonly SurveyReading[],
  options: { readonly ruleDoubt: number },
): Result<FretSurvey> => {
  const { ruleDoubt } = options;
  const wrong = problems(readings, ruleDoubt);
  if (wrong.length > 0) return failed(wrong);
  const fitted = surveyFit(readings, ruleDoubt);
  if (!fitted.ok) return fitted;
  const { fit, residuals } = fitted.value;
  if (fit.scaleLength.value <= 0)
    return failed([
      issue('', 'survey.order', 'Expected longer readings to higher frets: check which fret each belongs to.'),
    ]);

  const strays = strayReadings(readings, ruleDoubt);
  const struck = new Set(strays.flatMap((finding) => namedBy(finding, readings)));
  const sound = [...readings.keys()].filter((index) => !struck.has(index));
  const noise = noiseWithin(
    readings.filter((_, index) => !struck.has(index)),
    ruleDoubt,
  );
  const offFrets = strayFrets(readings, sound, noise);
  const findings = [...strays, ...offFrets];
  const left = new Set(findings.flatMap((finding) => namedBy(finding, readings)));
  const rest = readings.filter((_, index) => !left.has(index));
  const cleared = left.size > 0 && rest.length > 0 ? surveyFit(rest, ruleDoubt) : null;
  return ok({
    ...fit,
    residuals,
    frets: fretGroups(readings, [...readings.keys()]).map(({ fret, indices, values, mean }) => ({
      fret,
      count: values.length,
      mean,
      spread: Math.max(...values) - Math.min(...values),
      residual: indices.reduce((sum, index) => sum + (residuals[index] ?? 0), 0) / indices.length,
    })),
    findings,
    cleared: cleared?.ok ? cleared.value.fit : null,
  });
};
