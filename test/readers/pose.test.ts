import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { Pose, Reading } from '../../src/core/placement/poseTypes';
import { solvePose } from '../../src/core/placement/solvePose';
import { POSE_SETS } from '../reference/pose';

const script = fileURLToPath(new URL('pose_by_scipy.py', import.meta.url));

/** Debian's Python, which is the one that sees Debian's SciPy. */
const answers: readonly { readonly pose: readonly number[]; readonly sigma: readonly number[] }[] = JSON.parse(
  execFileSync('/usr/bin/python3', [script], { input: JSON.stringify(POSE_SETS), encoding: 'utf8' }),
);

const numbers = ({ x, y, angle }: Pose): readonly number[] => [x, y, angle];

describe('solvePose beside SciPy', () => {
  it.each(POSE_SETS.map((set, index) => ({ ...set, index })))('set $index', ({ nominal, readings, index }) => {
    const fit = solvePose(nominal, readings as readonly Reading[]);
    if (!fit.ok) throw new Error(fit.issues[0]?.message);
    const found = [...numbers(fit.value.pose), ...numbers(fit.value.sigma)];
    const wanted = [...(answers[index]?.pose ?? []), ...(answers[index]?.sigma ?? [])];
    expect(wanted).toHaveLength(6);
    for (const [k, value] of found.entries()) {
      const other = wanted[k] ?? Number.NaN;
      expect(Math.abs(value - other)).toBeLessThan(1e-6 * Math.max(1, Math.abs(k < 3 ? 1 : other)));
    }
  });
});
