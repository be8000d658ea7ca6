import { describe, expect, it } from 'vitest';
import { lengthBehind } from '../../../src/core/intonation/stringLengths';

// Worked by hand with right triangles.
describe('lengthBehind', () => {
  it('is straight with the finger at the fret, whatever the push-down', () => {
    expect(lengthBehind(40, 3, 0.5, 0, 0, 20, 0)).toBeCloseTo(Math.sqrt(1609), 12);
    expect(lengthBehind(40, 3, 0.5, 0, 9, 20, 0)).toBeCloseTo(Math.sqrt(1609), 12);
  });
  it('carries the slope to the finger, then runs straight to the nut', () => {
    // slope 3/4 over 4: 5 long, 3 deep; then 12 along and 2 + 3 up: 13.
    expect(lengthBehind(16, 2, 0.75, 4, 0, 8, 0)).toBeCloseTo(18, 12);
  });
  it('goes down to the finger when it presses deeper than the slope', () => {
    // 40 along, 7.5 deep: 40.697; then 60 along, 10 up: 60.828; it passes the fret before, at 90, 0.83 above its top.
    expect(lengthBehind(100, 2.5, 0, 40, 7.5, 90, 0)).toBeCloseTo(40.697 + 60.828, 3);
  });
  it('rests on the fret before when the straight way would pass below it', () => {
    // Down 7.5 over 40: 40.697; up 7.5 over 18 to the fret before: 19.5; then 42 along, 5 up to the nut: 42.297.
    expect(lengthBehind(100, 5, 0, 40, 7.5, 58, 0)).toBeCloseTo(40.697 + 19.5 + 42.297, 3);
  });
  it('presses no deeper than a fifth of the distance', () => {
    expect(lengthBehind(100, 5, 0, 40, 30, 58, 0)).toBeCloseTo(lengthBehind(100, 5, 0, 40, 8, 58, 0), 12);
  });
});
