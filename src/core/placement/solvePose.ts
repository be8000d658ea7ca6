import { solveNormalEquations } from '../numeric/normalEquations';
import { fail, failed, type Issue, issue, ok, type Result } from '../result';
import type { Freedom, Pose, PoseFit, Reading } from './poseTypes';
import { type Prediction, predictReading } from './predictReading';
import { unseenFreedoms } from './unseenFreedoms';

const FREEDOMS: readonly Freedom[] = ['x', 'y', 'angle'];

/** Steps of Gauss and Newton; from a bridge that lies within centimetres of its place three or four do. */
const MOST_STEPS = 60;
/** A step is over when it moves no point of the bridge by more than this, mm (an arm of 100 mm for the turn). */
const STILL_MM = 1e-11;
const ARM_MM = 100;
/** Farther from its place than this, mm or radians, it is no longer the answer to these readings. */
const FARTHEST = { mm: 200, radians: 1 } as const;

/** What of a reading cannot be worked with. */
const readingIssues = (reading: Reading, index: number): readonly Issue[] => {
  const path = `readings.${index}`;
  const numbers: number[] = [];
  JSON.stringify(reading, (_, value: unknown) => {
    if (typeof value === 'number') numbers.push(value);
    return value;
  });
  if (!numbers.every(Number.isFinite)) return [issue(path, 'pose.notFinite', 'Expected finite numbers.')];
  if (reading.sigma <= 0) return [issue(`${path}.sigma`, 'pose.sigma', 'Expected the doubt of a reading above 0.')];
  const direction = reading.kind === 'offset' || reading.kind === 'toLine' ? reading.direction : null;
  if (direction !== null && Math.hypot(direction.x, direction.y) === 0)
    return [issue(`${path}.direction`, 'pose.direction', 'Expected a direction that leads somewhere.')];
  if (reading.kind === 'toLine' && reading.line[0].x === reading.line[1].x && reading.line[0].y === reading.line[1].y)
    return [issue(`${path}.line`, 'pose.line', 'Expected a line between two different points.')];
  return [];
};

const moved = (pose: Pose, freedoms: readonly Freedom[], step: readonly number[]): Pose => {
  const after = (freedom: Freedom): number => pose[freedom] + (step[freedoms.indexOf(freedom)] ?? 0);
  return { x: after('x'), y: after('y'), angle: after('angle') };
};

const predictAll = (readings: readonly Reading[], pose: Pose): readonly Prediction[] =>
  readings.map((reading) => predictReading(reading, pose));

/** Σ(residual/sigma)² */
const cost = (readings: readonly Reading[], predicted: readonly Prediction[]): number =>
  readings.reduce((sum, { value, sigma }, k) => sum + ((value - (predicted[k]?.value ?? 0)) / sigma) ** 2, 0);

/** The best step from a pose, and the covariance there. */
const stepFrom = (readings: readonly Reading[], predicted: readonly Prediction[], freedoms: readonly Freedom[]) =>
  solveNormalEquations(
    predicted.map(({ slopes }) => freedoms.map((freedom) => slopes[FREEDOMS.indexOf(freedom)] ?? 0)),
    readings.map(({ value }, k) => value - (predicted[k]?.value ?? 0)),
    readings.map(({ sigma }) => sigma),
  );

/**
 * Where the bridge sits, from readings of any kinds: weighted least squares by Gauss-Newton steps from the nominal pose,
 * each halved while it would make the readings fit worse (Björck, Numerical Methods for Least Squares Problems, 1996,
 * ch. 9.2). A freedom that the readings do not fix stays nominal, its sigma Infinity.
 *
 * Codes: pose.notFinite, pose.sigma, pose.direction, pose.line (the reading cannot be worked with), pose.noAnswer (no
 * place of the bridge near its nominal one goes with these readings).
 */
export const solvePose = (nominal: Pose, readings: readonly Reading[]): Result<PoseFit> => {
  if (![nominal.x, nominal.y, nominal.angle].every(Number.isFinite))
    return fail('nominal', 'pose.notFinite', 'Expected finite numbers.');
  const issues = readings.flatMap(readingIssues);
  if (issues.length > 0) return failed(issues);
  const noAnswer = (): Result<PoseFit> =>
    fail('', 'pose.noAnswer', 'Expected readings of a bridge near its place: none goes with all of these.');

  let predicted = predictAll(readings, nominal);
  if (!predicted.every(({ value, slopes }) => [value, ...slopes].every(Number.isFinite))) return noAnswer();
  const unseen = unseenFreedoms(predicted.map(({ slopes }) => slopes));
  const seen = FREEDOMS.filter((freedom) => !unseen.includes(freedom));
  const residualsOf = () => readings.map(({ value }, k) => value - (predicted[k]?.value ?? 0));
  const infinite: Pose = { x: Infinity, y: Infinity, angle: Infinity };
  if (seen.length === 0) return ok({ pose: nominal, sigma: infinite, residuals: residualsOf(), unseen });

  let pose = nominal;
  for (let count = 0; count < MOST_STEPS; count += 1) {
    const best = stepFrom(readings, predicted, seen);
    if (!best.ok) return noAnswer();
    const now = cost(readings, predicted);
    let share = 1;
    let next = moved(pose, seen, best.value.solution);
    let there = predictAll(readings, next);
    while (!(cost(readings, there) <= now) && share > 1e-6) {
      share /= 2;
      next = moved(
        pose,
        seen,
        best.value.solution.map((entry) => entry * share),
      );
      there = predictAll(readings, next);
    }
    const better = cost(readings, there) <= now;
    const still = seen.every(
      (freedom, k) => Math.abs(best.value.solution[k] ?? 0) * (freedom === 'angle' ? ARM_MM : 1) <= STILL_MM,
    );
    if (better) {
      pose = next;
      predicted = there;
    }
    const far = Math.hypot(pose.x - nominal.x, pose.y - nominal.y) > FARTHEST.mm;
    if (far || Math.abs(pose.angle - nominal.angle) > FARTHEST.radians) return noAnswer();
    if (still || !better) break;
  }
  const last = stepFrom(readings, predicted, seen);
  if (!last.ok) return noAnswer();
  const covariance = last.value.covariance;
  const sigmaOf = (freedom: Freedom): number => {
    const k = seen.indexOf(freedom);
    return k < 0 ? Number.POSITIVE_INFINITY : Math.sqrt(covariance[k]?.[k] ?? 0);
  };
  const sigma: Pose = { x: sigmaOf('x'), y: sigmaOf('y'), angle: sigmaOf('angle') };
  return ok({ pose, sigma, residuals: residualsOf(), unseen });
};
