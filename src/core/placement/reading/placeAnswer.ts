import type { TakenReading } from '../../document/buildTypes';
import type { Point } from '../../geom/types';
import { fail, failed, type Issue, ok, type Result } from '../../result';
import type { Freedom, Pose } from '../poseTypes';
import { predictReading } from '../predictReading';
import { solvePose } from '../solvePose';
import type { FreedomAnswer, FreedomVerdict, PlaceAnswer } from './answerTypes';
import { covarianceOf, spreadOf } from './covarianceOf';
import { marginsLeft, type SpreadAt, stringsLeft } from './leftOver';
import { moveSteps } from './moveSteps';
import { bestNext, type Tolerance, weighedLine } from './payingOrder';
import { placeLimit } from './placeLimits';
import { quarrelsWith } from './quarrels';
import { nominalPose, type ReadCase } from './readCase';
import { readLineAt } from './readLines';
import type { ReadLine } from './types';

/** The normal distribution's 95 %. */
const SURE = 1.96;
const FREEDOMS: readonly Freedom[] = ['x', 'y', 'angle'];
const WORST: readonly FreedomVerdict[] = ['off', 'unseen', 'unsure', 'good'];

const verdictOf = (off: number, sigma: number, tolerance: number): FreedomVerdict => {
  if (!Number.isFinite(sigma)) return 'unseen';
  if (Math.abs(off) <= tolerance && SURE * sigma <= tolerance) return 'good';
  return Math.abs(off) - SURE * sigma > tolerance ? 'off' : 'unsure';
};

/** The pose without what its own doubt covers. */
const surePose = (pose: Pose, nominal: Pose, sigma: Pose): Pose => {
  const sure = (freedom: Freedom): number =>
    Math.abs(pose[freedom] - nominal[freedom]) > SURE * sigma[freedom] ? pose[freedom] : nominal[freedom];
  return { x: sure('x'), y: sure('y'), angle: sure('angle') };
};

/** The tolerances of this project. */
export const tolerancesOf = ({ project }: ReadCase): Tolerance => ({
  x: placeLimit('placeSideways', project.limits),
  y: placeLimit('placeAlong', project.limits),
  angle: placeLimit('placeTurn', project.limits),
});

/** A front corner in the bridge frame: the wing that a hand moves. */
const wingTip = (read: ReadCase, nominal: Pose, side: 'treble' | 'bass'): Point => {
  const point = read.bridge.points.find(({ id }) => id === `front-${side}`)?.at;
  return point === undefined
    ? { x: (side === 'treble' ? 1 : -1) * 76, y: read.bridge.front - nominal.y }
    : { x: point.x, y: point.y - nominal.y };
};

const CROSSES = /^(longer-across$|.+-treble-to-.+-bass$|.+-bass-to-.+-treble$)/;

/**
 * What readings of the bridge in its place say. Readings of lines that this instrument no longer has are left out. Codes:
 * place.none (nothing was read), those of solvePose.
 */
export const placeAnswer = (
  read: ReadCase,
  lines: readonly ReadLine[],
  taken: readonly TakenReading[],
  sigmaOf: (line: ReadLine) => number,
): Result<PlaceAnswer> => {
  const found = taken.flatMap((reading) => {
    const line = readLineAt(read, lines, reading.line);
    return line === null ? [] : [{ reading, line }];
  });
  if (found.length === 0) return fail('build.rounds', 'place.none', 'Nothing was read yet.');
  const nominal = nominalPose(read);
  const readings = found.map(({ reading, line }) => line.reading(reading.value, reading.sigma));
  const solved = solvePose(nominal, readings);
  if (!solved.ok)
    return failed(
      solved.issues.map(
        (each): Issue => ({
          ...each,
          message:
            'No place near the planned one goes with all these readings: one of them is far off, or of another line.',
        }),
      ),
    );
  const fit = solved.value;
  const { pose, sigma, unseen } = fit;
  const tolerance = tolerancesOf(read);
  const freedoms = FREEDOMS.map((freedom): FreedomAnswer => {
    const off = pose[freedom] - nominal[freedom];
    const verdict = verdictOf(off, sigma[freedom], tolerance[freedom]);
    return { freedom, off, sigma: sigma[freedom], tolerance: tolerance[freedom], verdict };
  });
  const seen = FREEDOMS.filter((freedom) => !unseen.includes(freedom));
  const slopes = readings.map((reading) => predictReading(reading, pose).slopes);
  const rows = slopes.map((each) => seen.map((freedom) => each[FREEDOMS.indexOf(freedom)] ?? 0));
  const sigmas = readings.map((reading) => reading.sigma);
  const covariance = covarianceOf(rows, sigmas);
  const quarrel = quarrelsWith(slopes, fit.residuals, sigmas);
  const spreadAt: SpreadAt = (by) =>
    unseen.some((freedom) => Math.abs(by[freedom]) > 1e-9)
      ? Number.POSITIVE_INFINITY
      : spreadOf(
          seen.map((freedom) => by[freedom]),
          covariance,
        );
  return ok({
    fit,
    nominal,
    freedoms,
    verdict: WORST.find((verdict) => freedoms.some((each) => each.verdict === verdict)) ?? 'good',
    // What may as well be nothing is not moved.
    steps: moveSteps(surePose(pose, nominal, sigma), nominal, {
      treble: wingTip(read, nominal, 'treble'),
      bass: wingTip(read, nominal, 'bass'),
    }),
    strings: stringsLeft(read, pose, nominal, spreadAt),
    margins: marginsLeft(lines, pose, nominal, spreadAt),
    residuals: found.map(({ reading: { id, line } }, index) => ({ id, line, residual: quarrel.left[index] ?? 0 })),
    quarrel: {
      ids: quarrel.suspects.map((index) => found[index]?.reading.id ?? ''),
      times: quarrel.times,
      together: quarrel.together && quarrel.suspects.length === 0,
    },
    next: bestNext(
      lines.filter(({ id }) => !found.some(({ line }) => line.id === id)),
      found.map(({ reading, line }) => weighedLine(line, pose, reading.sigma)),
      pose,
      tolerance,
      sigmaOf,
    ),
    crossesAlone: found.every(({ line }) => CROSSES.test(line.id)),
  });
};
