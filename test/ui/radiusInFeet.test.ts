import { describe, expect, it } from 'vitest';
import { feetNote, radiusInFeet } from '../../src/ui/draw/sideView/radiusInFeet';

describe('radii in feet', () => {
  // 12 in to the foot.
  it.each([
    ['28 ft', '336 in'],
    ["25'", '300 in'],
    ['27,5 feet', '330 in'],
    ['8534.4', '8534.4'],
    ['336 in', '336 in'],
    ['', ''],
    ["28'6", "28'6"],
  ])('%s is typed on as %s', (text, plain) => expect(radiusInFeet(text)).toBe(plain));

  it('are told back as makers call them', () => {
    expect(feetNote(8534.4)).toBe('28 ft');
    expect(feetNote(8500)).toBe('27.9 ft');
    expect(feetNote(null)).toBeUndefined();
  });
});
