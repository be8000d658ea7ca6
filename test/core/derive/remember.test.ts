import { describe, expect, it } from 'vitest';
import { remember } from '../../../src/core/derive/remember';

describe('remember', () => {
  it('works again only when an argument is another value or object', () => {
    let works = 0;
    const total = remember((list: readonly number[], more: number) => {
      works += 1;
      return list.reduce((sum, each) => sum + each, more);
    });
    const list = [1, 2];
    expect([total(list, 3), total(list, 3), works]).toEqual([6, 6, 1]);
    expect([total(list, 4), works]).toEqual([7, 2]);
    expect([total([1, 2], 4), works]).toEqual([7, 3]);
    expect([total(list, Number.NaN), total(list, Number.NaN), works]).toEqual([Number.NaN, Number.NaN, 4]);
  });
});
