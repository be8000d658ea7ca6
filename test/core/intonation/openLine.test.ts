import { describe, expect, it } from 'vitest';
import { fretGrid } from '../../../src/core/intonation/fretGrid';
import { openLine } from '../../../src/core/intonation/openLine';

const SETUP = {
  scaleLength: 645,
  nutHeight: 0.5,
  action: 2.2,
  relief: 0.15,
  reliefFrets: [1, 14] as const,
  fingerDistance: 0,
};

describe('openLine', () => {
  it('lies 3.78 mm above the fret-top plane at the saddle (by hand)', () => {
    // t at fret 12 between frets 1 and 14: 0.890555; dip 0.15·4·t·(1 − t) = 0.0585; 0.5 + 2·(2.2 − 0.0585 − 0.5) = 3.783.
    const { twelfthDip } = fretGrid(645, [1, 14], [12]);
    expect(twelfthDip * 0.15).toBeCloseTo(0.0585, 4);
    expect(openLine(SETUP, twelfthDip, 'action', 0, 0).saddleHeight).toBeCloseTo(3.783, 3);
  });

  it('goes on along its own slope when the saddle moves, and keeps the height when that is held', () => {
    // No relief: rise 3.4 over 645; 6.45 farther adds one hundredth.
    const flat = { ...SETUP, relief: 0 };
    expect(openLine(flat, 0, 'action', 6.45, 0).saddleHeight).toBeCloseTo(0.5 + 3.434, 9);
    expect(openLine(flat, 0, 'height', 6.45, 0).saddleHeight).toBeCloseTo(0.5 + 3.4, 9);
  });

  it('passes through the same clearance over fret 12 when the nut moves', () => {
    const flat = { ...SETUP, relief: 0 };
    const { saddleHeight } = openLine(flat, 0, 'action', 3, -1);
    const atTwelfth = 0.5 + ((saddleHeight - 0.5) * (322.5 - 1)) / (645 + 3 - 1);
    expect(atTwelfth).toBeCloseTo(2.2, 9);
  });
});

describe('fretGrid', () => {
  it('spaces frets by the rule of 17.817 (fret rule, quoted by makers)', () => {
    const { distance, gap } = fretGrid(645, [1, 14], [1, 12]);
    expect(645 / (distance[0] as number)).toBeCloseTo(17.817, 3);
    expect(distance[1]).toBeCloseTo(322.5, 9);
    expect(gap[0]).toBe(distance[0]);
  });
  it('dips nowhere outside the straightedge, and between by the parabola (by hand)', () => {
    // Fret 3: t = (0.159104 − 0.056126)/0.498424 = 0.206607, 4·t·(1 − t) = 0.6557.
    const { dip } = fretGrid(645, [1, 14], [1, 3, 14, 15]);
    expect(Array.from(dip, (d) => d.toFixed(2))).toEqual(['0.00', '0.66', '0.00', '0.00']);
  });
});
