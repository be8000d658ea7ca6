import { leastSquaresLine } from '../numeric/leastSquaresLine';
import { fretDistance } from './fretDistance';
import { type FretGroup, fretGroups } from './fretGroups';
import { tooFar } from './strayReadings';
import type { SurveyFinding, SurveyReading } from './surveyTypes';

/** 95 % point of chi-square with one degree of freedom: a fret whose removal fits worse by less explains the readings as well. */
const AS_WELL = 3.841;

interface FretOff {
  readonly group: FretGroup;
  /** Mean less what the others say, mm. */
  readonly off: number;
  /** The same in its own sigmas. */
  readonly sigmas: number;
}

/** One fret held against the line through the others, each fret weighed by its readings. */
const offOthers = (groups: readonly FretGroup[], group: FretGroup, sigma: number): FretOff | null => {
  const share = (fret: number): number => fretDistance(1, fret);
  const line = leastSquaresLine(
    groups
      .filter((other) => other !== group)
      .map(({ fret, mean, values }) => ({ x: share(fret), y: mean, sigma: sigma / Math.sqrt(values.length) })),
  );
  if (!line.ok) return null;
  const { intercept, slope, covariance } = line.value;
  const x = share(group.fret);
  const predicted = covariance.intercept + 2 * x * covariance.both + x * x * covariance.slope;
  const off = group.mean - intercept - slope * x;
  return { group, off, sigmas: Math.abs(off) / Math.sqrt(sigma ** 2 / group.values.length + predicted) };
};

/**
 * Frets whose readings sit off what the others say, worst first. With three frets any of them explains the misfit, so
 * `instead` names the other two; from four on the readings can tell, if the frets are spread well enough. The search ends
 * at a finding that stays open.
 * @param kept places of the readings to look at
 * @param sigma doubt of one reading, mm
 */
export const strayFrets = (
  readings: readonly SurveyReading[],
  kept: readonly number[],
  sigma: number,
): readonly SurveyFinding[] => {
  const findings: SurveyFinding[] = [];
  let groups = fretGroups(readings, kept);
  while (groups.length >= 3) {
    const limit = tooFar(groups.length);
    const [worst, ...others] = groups
      .map((group) => offOthers(groups, group, sigma))
      .filter((each) => each !== null)
      .sort((a, b) => b.sigmas - a.sigmas);
    if (!worst || worst.sigmas <= limit) break;
    const { group, off, sigmas } = worst;
    // Taking a fret out lowers the sum of squares by the square of its sigmas.
    const instead = others
      .filter((other) => sigmas ** 2 - other.sigmas ** 2 < AS_WELL)
      .map((other) => other.group.fret)
      .sort((a, b) => a - b);
    findings.push({ kind: 'fret', fret: group.fret, off, readings: group.values.length, instead });
    if (instead.length > 0) break;
    groups = groups.filter((other) => other !== group);
  }
  return findings;
};
