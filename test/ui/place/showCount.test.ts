import { describe, expect, it } from 'vitest';
import { showCount, showSpan } from '../../../src/ui/place/run/timers/showCount';

describe('a clock', () => {
  it.each([
    [300, '5:00'],
    [299.2, '5:00'],
    [61, '1:01'],
    [0.2, '0:01'],
    [0, '0:00'],
    [-5, '0:00'],
    [3600, '1:00:00'],
    [86_399, '23:59:59'],
  ] as const)('%d seconds are %s', (seconds, text) => expect(showCount(seconds)).toBe(text));

  it.each([
    [0, '0 s'],
    [40.9, '40 s'],
    [719, '11 min'],
    [3600, '1 h'],
    [11_100, '3 h 5 min'],
  ] as const)('%d seconds took %s', (seconds, text) => expect(showSpan(seconds)).toBe(text));
});
