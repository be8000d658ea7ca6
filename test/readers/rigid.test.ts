import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { fitRigid } from '../../src/core/placement/rigid/fitRigid';
import { REGISTRATIONS } from '../reference/registration';

interface Task {
  readonly name: string;
  readonly from: readonly (readonly [number, number])[];
  readonly to: readonly (readonly [number, number])[];
  readonly weights: readonly number[];
}

/** Six pins with a slant against six old holes, read to a tenth and a little turned. */
const PINS = [28.6, 17.1, 5.7, -5.7, -17.1, -28.6].map((x) => [x, 660 - 0.0441 * x] as const);
const OLD = [
  [27.9, 659.4],
  [16.8, 659.7],
  [5.4, 660.4],
  [-5.5, 660.7],
  [-16.9, 661.4],
  [-28.1, 661.6],
] as const;

const TASKS: readonly Task[] = [
  ...REGISTRATIONS.map(({ name, from, to }) => ({ name, from, to, weights: from.map(() => 1) })),
  { name: 'pins on old holes', from: PINS, to: OLD, weights: [1, 1, 1, 1, 1, 1] },
  { name: 'pins on old holes, the outer two trusted more', from: PINS, to: OLD, weights: [9, 1, 1, 1, 1, 9] },
  {
    name: 'a mirror image',
    from: [
      [0, 0],
      [60, 5],
      [20, 40],
      [-30, 12],
    ],
    to: [
      [0, 0],
      [-60, 5],
      [-20, 40],
      [30, 12],
    ],
    weights: [1, 1, 1, 1],
  },
];

const script = fileURLToPath(new URL('rigid_by_scipy.py', import.meta.url));

/** Debian's Python, which is the one that sees Debian's SciPy. */
const answers: readonly {
  readonly angle: number;
  readonly x: number;
  readonly y: number;
  readonly rms: number;
  /** Null where the Procrustes problem is best solved by a reflection. */
  readonly procrustes: number | null;
}[] = JSON.parse(execFileSync('/usr/bin/python3', [script], { input: JSON.stringify(TASKS), encoding: 'utf8' }));

describe('fitRigid beside SciPy', () => {
  it.each(TASKS.map((task, index) => ({ ...task, index })))('$name', ({ from, to, weights, index }) => {
    const points = (pairs: Task['from']) => pairs.map(([x, y]) => ({ x, y }));
    const fit = fitRigid(points(from), points(to), weights);
    if (!fit.ok) throw new Error(fit.issues[0]?.message);
    const other = answers[index];
    if (other === undefined) throw new Error('SciPy gave no answer.');
    expect(fit.value.pose.angle).toBeCloseTo(other.angle, 6);
    expect(fit.value.pose.x).toBeCloseTo(other.x, 3);
    expect(fit.value.pose.y).toBeCloseTo(other.y, 3);
    expect(fit.value.rms).toBeCloseTo(other.rms, 6);
    if (other.procrustes !== null) expect(fit.value.pose.angle).toBeCloseTo(other.procrustes, 9);
  });

  // Holes that lie nearly in a line are often matched a hair better by a mirror image.
  it('would be answered with a reflection by the plain Procrustes problem in four of them', () => {
    const reflected = TASKS.filter((_, index) => answers[index]?.procrustes === null).map(({ name }) => name);
    expect(reflected).toEqual([TASKS[0], TASKS[3], TASKS[4], TASKS[5]].map((task) => task?.name));
  });
});
