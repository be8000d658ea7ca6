import { describe, expect, it } from 'vitest';
import * as core from '../../src/core/index';
import { TIE_BLOCK_650 } from '../reference/bench';
import type { Contract } from '../reference/contract';
import { PITCH } from '../reference/pitch';

// The type check of this line is the test of names and shapes; the rest shows that each one answers.
const face: Contract = core;

const square = [
  { x: 0, y: 0 },
  { x: 4, y: 0 },
  { x: 4, y: 3 },
] as const;
const triangle = {
  start: square[0],
  segments: [
    { kind: 'line', to: square[1] },
    { kind: 'line', to: square[2] },
  ],
  closed: true,
} as const;
const string = { name: 'E', frequency: 329.6276, elastic: { kind: 'measured', kappa: 100, b0: 0.01 } } as const;
const setup = {
  scaleLength: 650,
  nutHeight: 0.5,
  action: 2,
  relief: 0.1,
  reliefFrets: [1, 14],
  fingerDistance: 0,
} as const;

describe('the stable face', () => {
  it('reads and writes lengths', () => {
    expect(face.parseLength('25 3/8', 'in')).toEqual({ ok: true, value: expect.closeTo(25.375 * 25.4, 9) });
    expect(face.parseLength('25 11/', 'in')).toMatchObject({ ok: false, issues: [{ code: 'length.unfinished' }] });
    expect(face.formatLength(25.375 * 25.4, { unit: 'in', denominator: 32 })).toBe('25 3/8');
  });

  it('measures instruments', () => {
    expect(face.fretDistance(650, 1)).toBeCloseTo(650 / PITCH.rule, 9);
    expect(face.fitScale([{ fret: 12, value: 325, sigma: 0.2 }])).toMatchObject({ ok: true, value: { nutOffset: 0 } });
    const [marginTreble, marginBass, rule] = [3, 3, 'equal-centres'] as const;
    // Outsides 3 in from 50 with strings of 1: centres at ±21.5.
    expect(face.stringPositions({ width: 50, marginTreble, marginBass, diameters: [1, 1], rule })).toEqual({
      ok: true,
      value: [21.5, -21.5],
    });
  });

  it('knows cents and setbacks', () => {
    expect(face.centsPerMm(650, 12)).toBeCloseTo(PITCH.centsPerMmOf650, 5);
    expect(face.centsPerMm(650, 12) * 1.25).toBeCloseTo(TIE_BLOCK_650.mixUpCents, 1);
    // A note sharp by what 1 mm is worth wants about 1 mm away from the nut.
    expect(face.saddleTravelFor(PITCH.centsPerMmOf650, 650, 12)).toBeCloseTo(1, 1);
    const cents = face.fretCents(string, setup, { saddle: 0, nut: 0 }, [1, 5, 12]);
    expect(cents).toHaveLength(3);
    expect(cents[2]).toBeGreaterThan(0);
    const fit = face.fitSetback(string, setup, { frets: [12], freeNut: false });
    expect(fit).toMatchObject({ ok: true, value: { nut: 0, cents: [expect.closeTo(0, 6)] } });
    expect(
      face.fitSaddleLine(
        [
          { x: 27, setback: 1 },
          { x: -27, setback: 3 },
        ],
        'outer',
      ),
    ).toMatchObject({ ok: true, value: { centre: 2 } });
  });

  // A triangle of 4 by 3: area 6, centroid at the mean of its corners, clockwise as seen on the page.
  it('knows outlines', () => {
    expect(face.pathArea(triangle)).toBeCloseTo(6, 12);
    expect(face.signedArea(triangle)).toBeCloseTo(6, 12);
    expect(face.signedArea(face.mirrorPath(triangle))).toBeCloseTo(-6, 12);
    expect(face.pathCentroid(triangle)).toEqual({ x: expect.closeTo(8 / 3, 12), y: expect.closeTo(1, 12) });
  });

  // A strip of 1 all round the triangle of sides 3, 4, 5, and a whole disc in the corners; its inscribed circle is 1.
  it('offsets outlines', async () => {
    const grown = await face.offsetPath(triangle, 1);
    const area = grown.ok ? grown.value.reduce((sum, path) => sum + face.signedArea(path), 0) : Number.NaN;
    expect(area).toBeCloseTo(6 + 12 + Math.PI, 6);
    expect(await face.offsetPath(triangle, -1.01)).toEqual({ ok: true, value: [] });
    expect(await face.offsetPath({ ...triangle, closed: false }, 1)).toMatchObject({ ok: false });
  });

  // Both rules read 1 mm more than they should; 150 psi on 3000 mm²; 20 °C at 65 % is 12 %.
  it('places, proves and glues', () => {
    const line = [
      { x: -38, y: 0 },
      { x: 38, y: 0 },
    ] as const;
    const rule = { kind: 'toLine', direction: { x: 0, y: 1 }, line, value: 636, sigma: 0.2 } as const;
    const fit = face.solvePose({ x: 0, y: 635, angle: 0 }, [
      { ...rule, from: { x: -20, y: 0 } },
      { ...rule, from: { x: 20, y: 0 } },
    ]);
    expect(fit).toMatchObject({ ok: true, value: { pose: { y: expect.closeTo(636, 9) }, unseen: ['x'] } });
    expect(face.solvePrintFactor({ nominalX: 100, nominalY: 100, readX: 91.8, readY: 91.8 })).toMatchObject({
      ok: true,
      value: { verdict: 'reprint', factorX: expect.closeTo(1.0893, 4) },
    });
    expect(face.clampForce(3000, 150).newton).toBeCloseTo(3102.6, 1);
    expect(face.equilibriumMoisture(20, 65)).toBeCloseTo(12, 1);
  });

  it('throws RangeError or answers with a failure, as promised', () => {
    expect(() => face.fretDistance(Number.NaN, 1)).toThrow(RangeError);
    expect(() => face.centsPerMm(0, 12)).toThrow(RangeError);
    expect(face.fitScale([])).toMatchObject({ ok: false });
    expect(face.fitSaddleLine([], 'outer')).toMatchObject({ ok: false });
  });
});
