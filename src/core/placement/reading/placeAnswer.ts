import type { TakenReading } from '../../document/buildTypes';
import { centsPerMm } from '../../intonation/centsPerMm';
import { fail, failed, type Issue, ok, type Result } from '../../result';
import type { Freedom, Pose, PoseFit } from '../poseTypes';
import { predictReading } from '../predictReading';
import { solvePose } from '../solvePose';
import { type MoveStep, moveSteps } from './moveSteps';
import { bestNext, type Tolerance, weighedLine } from './payingOrder';
import { placeLimit } from './placeLimits';
import { quarrelsWith } from './quarrels';
import { nominalPose, type ReadCase } from './readCase';
import { readLineAt } from './readLines';
import type { ReadLine } from './types';

/** The normal distribution's 95 %. */
const SURE = 1.96;

/**
 * good: within its tolerance, and known at least as well as that. off: beyond it for sure. unsure: the readings cannot tell.
 * For sure: in 19 cases of 20.
 */
export type FreedomVerdict = 'good' | 'off' | 'unsure' | 'unseen';

/** A freedom of the bridge: how far off it sits, mm or radians, + toward the treble, toward the tail, and carrying the treble wing toward the tail. */
export interface FreedomAnswer {
  readonly freedom: Freedom;
  readonly off: number;
  readonly sigma: number;
  readonly tolerance: number;
  readonly verdict: FreedomVerdict;
}

export interface StringLeft {
  readonly id: string;
  readonly name: string;
  /** How far the string breaks behind its place, mm, + toward the tail. */
  readonly off: number;
  /** What that does at the 12th fret: + sharp. */
  readonly cents: number;
}

export interface PlaceAnswer {
  readonly fit: PoseFit;
  readonly nominal: Pose;
  readonly freedoms: readonly FreedomAnswer[];
  readonly verdict: FreedomVerdict;
  readonly steps: readonly MoveStep[];
  readonly strings: readonly StringLeft[];
  /** Edge to the outside of the outer strings at the last fret, as it is now and as meant, mm. */
  readonly margins: readonly { readonly side: 'treble' | 'bass'; readonly now: number; readonly meant: number }[];
  /** Each reading against what the answer makes of it, mm. */
  readonly residuals: readonly { readonly id: string; readonly line: string; readonly residual: number }[];
  /** The id of a reading that quarrels with the rest, and by how many times its own spread. */
  readonly quarrel: { readonly id: string; readonly times: number } | null;
  /** What to read next, to know more; null when nothing would help. */
  readonly next: ReadLine | null;
  /** Only distances across from corner to corner were compared: that proves nothing alone. */
  readonly crossesAlone: boolean;
}

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

const WORST: readonly FreedomVerdict[] = ['off', 'unseen', 'unsure', 'good'];

/** The tolerances of this project. */
export const tolerancesOf = ({ project }: ReadCase): Tolerance => ({
  x: placeLimit('placeSideways', project.limits),
  y: placeLimit('placeAlong', project.limits),
  angle: placeLimit('placeTurn', project.limits),
});

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
  const order: readonly Freedom[] = ['x', 'y', 'angle'];
  const freedoms = order.map((freedom): FreedomAnswer => {
    const off = pose[freedom] - nominal[freedom];
    return {
      freedom,
      off,
      sigma: sigma[freedom],
      tolerance: tolerance[freedom],
      verdict: verdictOf(off, sigma[freedom], tolerance[freedom]),
    };
  });
  const seen = order.filter((freedom) => !unseen.includes(freedom));
  const rows = readings.map((reading) => {
    const { slopes } = predictReading(reading, pose);
    return seen.map((freedom) => slopes[order.indexOf(freedom)] ?? 0);
  });
  const quarrel =
    seen.length === 0
      ? null
      : quarrelsWith(
          rows,
          fit.residuals,
          readings.map((reading) => reading.sigma),
        );
  const corner = (side: 'treble' | 'bass') => {
    const point = read.bridge.points.find(({ id }) => id === `front-${side}`)?.at;
    return point === undefined
      ? { x: (side === 'treble' ? 1 : -1) * 76, y: read.bridge.front - nominal.y }
      : { x: point.x, y: point.y - nominal.y };
  };
  const [cos, sin] = [Math.cos(pose.angle), Math.sin(pose.angle)];
  const cents = centsPerMm(read.scale.scaleLength, 12);
  return ok({
    fit,
    nominal,
    freedoms,
    verdict: WORST.find((verdict) => freedoms.some((each) => each.verdict === verdict)) ?? 'good',
    // What may as well be nothing is not moved.
    steps: moveSteps(surePose(pose, nominal, sigma), nominal, { treble: corner('treble'), bass: corner('bass') }),
    strings: read.strings.map(({ id, name, saddleX }) => {
      const along = read.saddle.slope * saddleX;
      const off = pose.y + sin * saddleX + cos * along - (nominal.y + along);
      // Toward the tail the string grows longer, and fretted notes fall.
      return { id, name, off, cents: -cents * off };
    }),
    margins: (['treble', 'bass'] as const).flatMap((side) => {
      const line = lines.find(({ id }) => id === `margin-${side}`);
      if (line === undefined) return [];
      const shift = predictReading(line.reading(0, 1), pose).value - predictReading(line.reading(0, 1), nominal).value;
      return [{ side, now: line.expected + shift, meant: line.expected }];
    }),
    residuals: found.map(({ reading }, index) => ({
      id: reading.id,
      line: reading.line,
      residual: fit.residuals[index] ?? 0,
    })),
    quarrel: quarrel === null ? null : { id: found[quarrel.index]?.reading.id ?? '', times: quarrel.times },
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
