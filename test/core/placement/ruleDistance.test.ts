import { describe, expect, it } from 'vitest';
import { ruleDistance } from '../../../src/core/placement/ruleDistance';
import { SQUARING, SQUARING_HALF_BRIDGE } from '../../reference/trade';

type Row = (typeof SQUARING)[number];

/** The two differences that show how a bridge sits: crossed (bass to treble less treble to bass) and sides (bass less treble). */
const differences = ({ a, ahead, offset, skew }: Row, rise: number) => {
  const angle = (skew * Math.PI) / 180;
  const corner = (side: number) => ({
    x: offset + side * SQUARING_HALF_BRIDGE * Math.cos(angle),
    y: ahead + side * SQUARING_HALF_BRIDGE * Math.sin(angle),
  });
  const read = (from: number, to: number) => ruleDistance({ x: from * a, y: 0 }, corner(to), rise);
  return [read(-1, 1) - read(1, -1), read(-1, -1) - read(1, 1)] as const;
};

describe('ruleDistance', () => {
  it.each(SQUARING)('squares from ±$a over $ahead: offset $offset, skew $skew°', (row) => {
    const [crossed, sides] = differences(row, 0);
    expect(crossed).toBeCloseTo(row.flat[0], 6);
    expect(sides).toBeCloseTo(row.flat[1], 6);
    expect(Math.abs(crossed - row.tableMicrons[0] / 1000)).toBeLessThan(row.skew === -0.284 ? 0.0015 : 0.00051);
    expect(Math.abs(sides - row.tableMicrons[1] / 1000)).toBeLessThan(row.skew === -0.284 ? 0.0015 : 0.00051);
  });

  it.each(SQUARING)('squares a bridge 10 mm below, from ±$a over $ahead: offset $offset, skew $skew°', (row) => {
    const [crossed, sides] = differences(row, 10);
    expect(crossed).toBeCloseTo(row.rise10[0], 6);
    expect(sides).toBeCloseTo(row.rise10[1], 6);
  });

  // 2-3-6-7 and 3-4-5, from memory; a sheet draped 10 mm down over 290 reads 290.172.
  it.each([
    [2, 3, 6, 7],
    [3, 4, 0, 5],
    [0, 290, 10, 290.17236],
    [0, 290, -10, 290.17236],
  ])('reads (%s, %s) with rise %s as %s', (x, y, rise, reading) => {
    expect(ruleDistance({ x: 1, y: 2 }, { x: 1 + x, y: 2 + y }, rise)).toBeCloseTo(reading, 5);
  });

  it.each([
    [{ x: Number.NaN, y: 0 }, 0],
    [{ x: 0, y: Number.POSITIVE_INFINITY }, 0],
    [{ x: 0, y: 0 }, Number.NaN],
  ])('refuses %o with rise %s', (to, rise) => {
    expect(() => ruleDistance({ x: 0, y: 0 }, to, rise)).toThrow(RangeError);
  });
});
