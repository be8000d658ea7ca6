import { expect, it } from 'vitest';
import { MM_PER_INCH } from '../../../src/core/units/mmPerInch';
import { INCH_IN_MM } from '../../reference/units';

it('takes the inch of 1959', () => {
  expect(MM_PER_INCH).toBe(INCH_IN_MM);
});
