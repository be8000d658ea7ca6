import { describe, expect, it } from 'vitest';
import { readScales } from '../../../src/ui/print/sets/readScales';

// By hand: 25 1/2 in are 647.7 mm.
describe('readScales', () => {
  it.each([
    ['645; 650', 'mm', [645, 650]],
    ['645, 650\n25 1/2in', 'mm', [645, 650, 647.7]],
    ['647,7; 650,5', 'mm', [647.7, 650.5]],
    ['25 1/2', 'in', [647.7]],
    [' ; ', 'mm', []],
    ['', 'mm', []],
  ] as const)('reads %j as %s', (text, unit, expected) => {
    const read = readScales(text, unit);
    expect(read.ok && read.value).toEqual(expected.map((each) => expect.closeTo(each, 9)));
  });

  it.each(['645; long', '645; 65O', '1e3'])('says what it could not read in %j', (text) => {
    const read = readScales(text, 'mm');
    expect(read.ok ? '' : read.issues[0]?.code).toBe('set.scales');
  });
});
