import { describe, expect, it } from 'vitest';
import type { Reading } from '../../../src/core/placement/poseTypes';
import { solvePose } from '../../../src/core/placement/solvePose';
import { SQUARING, SQUARING_HALF_BRIDGE } from '../../reference/trade';
import { valueOf as answerOf } from '../document/valueOf';

const B = SQUARING_HALF_BRIDGE;

describe('squaring by two comparisons', () => {
  // The table's own figures, read as differences without a rule: from the bass end to the treble corner less the other way,
  // and bass side less treble side. Half a micron of its rounding is worth 7 µm aside and 4 µrad.
  it.each(SQUARING)('finds offset $offset and skew $skew from both differences', ({ a, ahead, offset, skew, flat }) => {
    const board = (side: 1 | -1) => ({ x: side * a, y: -ahead });
    const corner = (side: 1 | -1) => ({ x: side * B, y: 0 });
    const readings: readonly Reading[] = [
      {
        kind: 'difference',
        a: { from: board(-1), to: corner(1) },
        b: { from: board(1), to: corner(-1) },
        value: flat[0],
        sigma: 0.15,
      },
      {
        kind: 'difference',
        a: { from: board(-1), to: corner(-1) },
        b: { from: board(1), to: corner(1) },
        value: flat[1],
        sigma: 0.15,
      },
    ];
    const fit = answerOf(solvePose({ x: 0, y: 0, angle: 0 }, readings));
    expect(fit.unseen).toEqual(['y']);
    expect(Math.abs(fit.pose.x - offset)).toBeLessThan(1e-4);
    expect(Math.abs(fit.pose.angle - (skew * Math.PI) / 180)).toBeLessThan(1e-6);
    // The closed formula beside the table: x ≈ D(dd + ss)/(4a), skew ≈ (dd − 2x(a + b)/D)/(2b).
    const [dd, ss] = flat;
    const x = (ahead * (dd + ss)) / (4 * a);
    expect(Math.abs(fit.pose.x - x)).toBeLessThan(0.12);
    expect(Math.abs(fit.pose.angle - (dd - (2 * x * (a + B)) / ahead) / (2 * B))).toBeLessThan(2e-3);
    // One comparison alone fixes neither.
    for (const alone of readings)
      expect(answerOf(solvePose({ x: 0, y: 0, angle: 0 }, [alone])).unseen).toEqual(
        expect.arrayContaining(['x', 'angle']),
      );
  });
});
