import { expect, it } from 'vitest';
import { ordinal } from '../../../src/core/units/ordinal';

it('ordinal writes ordinals', () => {
  expect([1, 2, 3, 4, 11, 12, 13, 14, 20, 21, 22, 101, 111].map(ordinal)).toEqual(
    '1st 2nd 3rd 4th 11th 12th 13th 14th 20th 21st 22nd 101st 111th'.split(' '),
  );
});
