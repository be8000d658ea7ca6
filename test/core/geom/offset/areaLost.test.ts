import { describe, expect, it } from 'vitest';
import { areaLost } from '../../../../src/core/geom/offset/areaLost';
import { rectanglePath } from '../../../../src/core/geom/rectanglePath';
import { RIM_SHARES } from '../../../reference/offset';

const INCH = 25.4;

describe('areaLost', () => {
  it.each(RIM_SHARES)('of %d × %d in under a rim of %d in is %d %%', async (length, width, rim, share) => {
    const found = await areaLost(rectanglePath(-length * 12.7, 0, length * INCH, width * INCH), rim * INCH);
    if (!found.ok) throw new Error(found.issues[0]?.message);
    const { whole, left, lost } = found.value;
    expect(Math.round(found.value.share * 100)).toBe(share);
    expect(whole).toBeCloseTo(length * width * INCH * INCH, 6);
    expect(left).toBeCloseTo((length - 2 * rim) * (width - 2 * rim) * INCH * INCH, 3);
    expect(lost).toBeCloseTo(whole - left, 9);
  });

  it('is nothing without a rim, and all under a wide one', async () => {
    const square = rectanglePath(0, 0, 10, 10);
    expect(await areaLost(square, 0)).toEqual({ ok: true, value: { whole: 100, left: 100, lost: 0, share: 0 } });
    expect(await areaLost(square, 5)).toEqual({ ok: true, value: { whole: 100, left: 0, lost: 100, share: 1 } });
  });

  it('refuses a rim below 0, one that is no number, and an open path', async () => {
    const square = rectanglePath(0, 0, 10, 10);
    expect(await areaLost(square, -0.1)).toMatchObject({ ok: false, issues: [{ code: 'offset.rim' }] });
    expect(await areaLost(square, Number.NaN)).toMatchObject({ ok: false, issues: [{ code: 'offset.distance' }] });
    expect(await areaLost({ ...square, closed: false }, 1)).toMatchObject({
      ok: false,
      issues: [{ code: 'path.open' }],
    });
  });
});
