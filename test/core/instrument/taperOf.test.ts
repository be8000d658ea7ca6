import { describe, expect, it } from 'vitest';
import { taperOf } from '../../../src/core/instrument/taperOf';
import { steelProject } from '../document/steelProject';

const { instrument } = steelProject;

describe('taperOf', () => {
  // Scale 640: 12th fret at 320, 24th at 480; 44 + 12 · 320 / 480 = 52.
  const scale = { scaleLength: 640, nutOffset: 0, from: 'entered', readings: 0, readingSpread: 0 } as const;
  const board = (twelfthWidth: number, last: number | null) => ({
    ...instrument,
    frets: { count: 24, bodyJoin: 14 },
    widths: { nut: 44, twelfth: twelfthWidth, last },
  });

  it('is silent without a width at the last fret', () => expect(taperOf(board(52, null), scale)).toBeNull());

  it('takes the last fret and all three widths', () => {
    const straight = taperOf(board(52, 56), scale);
    expect(straight).toMatchObject({ ok: true, value: { growth: 0.025, straightAtTwelfth: 52, straight: true } });
    const bulging = taperOf(board(53, 56), scale);
    expect(bulging).toMatchObject({ ok: true, value: { deviation: expect.closeTo(1, 9), straight: false } });
  });

  it('cannot tell on a board that ends at the 12th fret', () => {
    expect(taperOf({ ...board(52, 56), frets: { count: 12, bodyJoin: 12 } }, scale)).toMatchObject({ ok: false });
  });
});
