import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../src/core/numeric/seededRandom';
import type { Pose, Reading, ReadingKind } from '../../../src/core/placement/poseTypes';
import { solvePose } from '../../../src/core/placement/solvePose';
import { POSE_SETS } from '../../reference/pose';
import { SQUARING, SQUARING_HALF_BRIDGE } from '../../reference/trade';
import { valueOf as answerOf } from '../document/valueOf';
import { readAt } from './readAt';

const NOMINAL: Pose = { x: 0, y: 634.5, angle: 0 };
const B = SQUARING_HALF_BRIDGE;
const corner = (side: 1 | -1) => ({ x: side * B, y: -8.7 });
const fret = (side: 1 | -1) => ({ x: side * 28.5, y: 316 });
const diagonal = (from: 1 | -1, to: 1 | -1): ReadingKind => ({ kind: 'distance', from: fret(from), to: corner(to) });

/** One of every kind, and enough of them to fix the bridge. */
const KINDS: readonly ReadingKind[] = [
  { ...diagonal(1, 1), rise: 9 } as ReadingKind,
  diagonal(-1, -1),
  diagonal(1, -1),
  diagonal(-1, 1),
  { kind: 'offset', through: { x: 23, y: 0 }, direction: { x: 5.5, y: 316 }, to: { x: 20, y: -8.7 } },
  { kind: 'margin', nut: { x: 19, y: 0 }, saddle: { x: 27, y: -0.6 }, at: { x: 29.5, y: 420 } },
  { kind: 'margin', nut: { x: -19, y: 0 }, saddle: { x: -27, y: 0.6 }, at: { x: -29.5, y: 420 } },
  {
    kind: 'toLine',
    from: { x: 10, y: 0 },
    direction: { x: 0.02, y: 2 },
    line: [
      { x: -38, y: 1.6 },
      { x: 38, y: -1.6 },
    ],
    rise: 10,
  },
  { kind: 'difference', a: { from: fret(-1), to: corner(-1) }, b: { from: fret(1), to: corner(1) } },
];

const exact = (pose: Pose, kinds: readonly ReadingKind[] = KINDS, sigma = 0.25): readonly Reading[] =>
  kinds.map((kind) => ({ ...kind, value: readAt(kind, pose), sigma }));

describe('solvePose', () => {
  it.each(POSE_SETS.map((set, index) => ({ ...set, index })))(
    'agrees with SciPy on set $index',
    ({ nominal, readings, pose, sigma }) => {
      const fit = answerOf(solvePose(nominal, readings as readonly Reading[]));
      expect(fit.unseen).toEqual([]);
      for (const freedom of ['x', 'y', 'angle'] as const) {
        expect(Math.abs(fit.pose[freedom] - pose[freedom])).toBeLessThan(1e-6);
        expect(Math.abs(fit.sigma[freedom] - sigma[freedom])).toBeLessThan(1e-6 * Math.max(1, sigma[freedom]));
      }
      expect(fit.residuals).toHaveLength(readings.length);
    },
  );

  // The figures of the table come from plane geometry worked apart from this program; see the reference.
  it.each(SQUARING)('finds the bridge of the squaring table: offset $offset, skew $skew', (row) => {
    for (const [rise, figures] of [
      [0, row.flat],
      [10, row.rise10],
    ] as const) {
      const at = (side: 1 | -1) => ({ x: side * row.a, y: -row.ahead });
      const to = (side: 1 | -1) => ({ x: side * B, y: 0 });
      const turn = (row.skew * Math.PI) / 180;
      const truth = { x: row.offset, y: 0, angle: turn };
      const four = ([1, -1] as const).flatMap((from) =>
        ([1, -1] as const).map(
          (end): ReadingKind => ({ kind: 'distance', from: at(from), to: to(end), rise }) as ReadingKind,
        ),
      );
      const values = four.map((kind) => readAt(kind, truth));
      // Treble to treble, treble to bass, bass to treble, bass to bass.
      const [tt = 0, tb = 0, bt = 0, bb = 0] = values;
      expect(bt - tb).toBeCloseTo(figures[0], 5);
      expect(bb - tt).toBeCloseTo(figures[1], 5);
      const readings = four.map((kind, k): Reading => ({ ...kind, value: values[k] ?? 0, sigma: 0.5 }));
      const fit = answerOf(solvePose({ x: 0, y: 0, angle: 0 }, readings));
      expect(Math.abs(fit.pose.x - row.offset)).toBeLessThan(1e-6);
      expect(Math.abs(fit.pose.angle - turn)).toBeLessThan(1e-6);
      // The closed formula of the same source: x ≈ D(dd + ss)/(4a), skew ≈ (dd − 2x(a + b)/D)/(2b).
      const [dd, ss] = figures;
      const x = (row.ahead * (dd + ss)) / (4 * row.a);
      expect(Math.abs(fit.pose.x - x)).toBeLessThan(0.12);
      expect(Math.abs(fit.pose.angle - (dd - (2 * x * (row.a + B)) / row.ahead) / (2 * B))).toBeLessThan(2e-3);
    }
  });

  it('finds 1,000 poses from exact readings within 1 µm and 1 µrad', () => {
    const { uniform } = seededRandom(11);
    const within = (reach: number) => (2 * uniform() - 1) * reach;
    for (let count = 0; count < 1000; count += 1) {
      const truth = { x: within(4), y: NOMINAL.y + within(6), angle: within(0.05) };
      const start = uniform() < 0.5 ? 0 : 5;
      const fit = answerOf(solvePose(NOMINAL, exact(truth, KINDS.slice(start === 0 ? 0 : 4))));
      expect(fit.unseen).toEqual([]);
      expect(Math.hypot(fit.pose.x - truth.x, fit.pose.y - truth.y)).toBeLessThan(1e-3);
      expect(Math.abs(fit.pose.angle - truth.angle)).toBeLessThan(1e-6);
    }
  });

  // 1,000 bridges, each freedom's interval of ± 1.96 sigma (normal deviate of 95 %, from memory).
  it('holds the truth within its 95 % interval in 93 to 97 of 100', () => {
    const { uniform, normal } = seededRandom(7);
    const held = { x: 0, y: 0, angle: 0 };
    for (let count = 0; count < 1000; count += 1) {
      const truth = { x: 3 * uniform() - 1.5, y: NOMINAL.y + 3 * uniform() - 1.5, angle: 0.02 * uniform() - 0.01 };
      const readings = exact(truth).map((reading) => ({ ...reading, value: reading.value + 0.25 * normal() }));
      const fit = answerOf(solvePose(NOMINAL, readings));
      for (const freedom of ['x', 'y', 'angle'] as const)
        if (Math.abs(fit.pose[freedom] - truth[freedom]) <= 1.959964 * fit.sigma[freedom]) held[freedom] += 1;
    }
    for (const count of Object.values(held)) {
      expect(count).toBeGreaterThanOrEqual(930);
      expect(count).toBeLessThanOrEqual(970);
    }
  });

  const truth = { x: 0.8, y: NOMINAL.y + 0.5, angle: 0.005 };
  const acrossAt = (x: number): ReadingKind => ({
    kind: 'toLine',
    from: { x, y: 0 },
    direction: { x: 0, y: 1 },
    line: [corner(-1), corner(1)],
  });
  const aside: ReadingKind = {
    kind: 'offset',
    through: { x: 0, y: 0 },
    direction: { x: 0, y: 1 },
    to: { x: 0, y: 0 },
  };

  it.each([
    ['no readings', [], ['x', 'y', 'angle']],
    ['both cross-diagonals', [diagonal(1, -1), diagonal(-1, 1)], ['x', 'angle']],
    ['one distance to the front edge on the centreline', [acrossAt(0)], ['x', 'angle']],
    ['two distances to the front edge', [acrossAt(-60), acrossAt(60)], ['x']],
    ['an offset at the origin of the bridge', [aside], ['y', 'angle']],
    ['an offset and one distance on the centreline', [aside, acrossAt(0)], ['angle']],
    ['an offset and two distances', [aside, acrossAt(-60), acrossAt(60)], []],
  ] as const)('%s: says which freedom it cannot see', (_, kinds, unseen) => {
    const fit = answerOf(solvePose(NOMINAL, exact(truth, kinds)));
    expect(fit.unseen).toEqual(unseen);
    for (const freedom of ['x', 'y', 'angle'] as const) {
      const blind = (unseen as readonly string[]).includes(freedom);
      expect(Number.isFinite(fit.sigma[freedom])).toBe(!blind);
      if (blind) expect(fit.pose[freedom]).toBe(NOMINAL[freedom]);
    }
  });

  it('refuses readings that cannot be', () => {
    const reading: Reading = { ...aside, value: 1, sigma: 0.2 };
    const code = (wrong: Reading) => {
      const fit = solvePose(NOMINAL, [wrong]);
      return fit.ok ? null : fit.issues[0]?.code;
    };
    expect(code({ ...reading, sigma: 0 })).toBe('pose.sigma');
    expect(code({ ...reading, value: Number.NaN })).toBe('pose.notFinite');
    expect(code({ ...reading, direction: { x: 0, y: 0 } } as Reading)).toBe('pose.direction');
    const line = [corner(1), corner(1)] as const;
    expect(code({ ...acrossAt(0), line, value: 600, sigma: 0.2 } as Reading)).toBe('pose.line');
    // A bridge 400 mm from its place is none.
    expect(code({ ...reading, value: -400 })).toBe('pose.noAnswer');
  });
});
