import { describe, expect, it } from 'vitest';
import { checkMessage } from '../../../src/core/checks/checkMessage';
import { rimCheck } from '../../../src/core/checks/rimCheck';

const toMm = (mm: number) => `${mm.toFixed(2)} mm`;

describe('rimCheck', () => {
  it('is not asked without a rim', () => {
    expect(rimCheck(0, 0, {})).toEqual([]);
  });

  // From 1/16 in = 1.5875 mm on, common practice.
  it.each([
    [0.79375, 'good'],
    [1.58, 'good'],
    [25.4 / 16, 'look'],
    [3.175, 'look'],
  ])('of %s mm is %s', (rim, verdict) => {
    expect(rimCheck(rim, 0.1, {})).toMatchObject([{ verdict }]);
  });

  it('tells the share, the limit and its source', () => {
    const [found] = rimCheck(3.175, 0.281, {});
    if (found === undefined) throw new Error('there is no check');
    expect(checkMessage(found, toMm)).toBe(
      'Finish left 3.17 mm wide under the rim takes 28 % of the glue area; less than 1.59 mm is usual.',
    );
    expect(found.source).toContain('jakewildwood.blogspot.com');
  });

  it('goes by the maker’s own limit', () => {
    expect(rimCheck(2, 0.1, { rim: 2.5 })).toMatchObject([{ verdict: 'good', source: 'set by the maker' }]);
    expect(rimCheck(0.5, 0.1, { rim: 0.4 })).toMatchObject([{ verdict: 'look', source: 'set by the maker' }]);
  });

  // Trade practice: a rabbet under the rim lets the film stay; it must be as wide as the rim.
  it('lets a wide rim pass that is rebated as wide', () => {
    expect(rimCheck(3.175, 0.28, {}, 3.175)).toMatchObject([
      { verdict: 'good', message: expect.stringContaining('in a rebate') },
    ]);
    expect(rimCheck(3.175, 0.28, {}, 1.6)).toMatchObject([{ verdict: 'look' }]);
  });
});
