import { centsPerMm } from '../../intonation/centsPerMm';
import type { Freedom, Pose } from '../poseTypes';
import { predictReading } from '../predictReading';
import type { MarginLeft, StringLeft } from './answerTypes';
import type { ReadCase } from './readCase';
import type { ReadLine } from './types';

/** One sigma of a figure by its slopes along x, y (mm per mm) and angle (mm per radian); Infinity where that is not seen. */
export type SpreadAt = (slopes: Readonly<Record<Freedom, number>>) => number;

/** Where each string would break if the bridge were left at this pose, and what that does to its pitch. */
export const stringsLeft = (read: ReadCase, pose: Pose, nominal: Pose, spreadAt: SpreadAt): readonly StringLeft[] => {
  const cents = centsPerMm(read.scale.scaleLength, 12);
  const [cos, sin] = [Math.cos(pose.angle), Math.sin(pose.angle)];
  return read.strings.map(({ id, name, saddleX }) => {
    const along = read.saddle.slope * saddleX;
    const off = pose.y + sin * saddleX + cos * along - (nominal.y + along);
    const sigma = spreadAt({ x: 0, y: 1, angle: cos * saddleX - sin * along });
    // Toward the tail the string grows longer, and fretted notes fall.
    return { id, name, off, sigma, cents: -cents * off, centsSigma: cents * sigma };
  });
};

/** Both outer strings against the edges of the board at the last fret, as the bridge sits at this pose. */
export const marginsLeft = (
  lines: readonly ReadLine[],
  pose: Pose,
  nominal: Pose,
  spreadAt: SpreadAt,
): readonly MarginLeft[] =>
  (['treble', 'bass'] as const).flatMap((side) => {
    const line = lines.find(({ id }) => id === `margin-${side}`);
    if (line === undefined) return [];
    const here = predictReading(line.reading(0, 1), pose);
    const shift = here.value - predictReading(line.reading(0, 1), nominal).value;
    const [x, y, angle] = here.slopes;
    return [{ side, now: line.expected + shift, meant: line.expected, sigma: spreadAt({ x, y, angle }) }];
  });
