import { afterEach, describe, expect, it, vi } from 'vitest';
import { circlePath } from '../../../../src/core/geom/circlePath';
import { mirrorPath } from '../../../../src/core/geom/mirrorPath';
import { areaWithout } from '../../../../src/core/geom/offset/areaWithout';
import { rectanglePath } from '../../../../src/core/geom/rectanglePath';
import type { Path } from '../../../../src/core/geom/types';

const area = async (outlines: readonly Path[], holes: readonly Path[]): Promise<number> => {
  const found = await areaWithout(outlines, holes);
  if (!found.ok) throw new Error(found.issues[0]?.message);
  return found.value;
};

/** Far from the origin, as a bridge lies from the nut. */
const plate = rectanglePath(-50, 600, 100, 30);
const hole = (x: number, y: number, radius = 2.5): Path => circlePath({ x, y }, radius);

describe('areaWithout', () => {
  // Areas by hand: sides, π r², and for half a circle that sticks out π r²/2.
  it.each<[string, readonly Path[], readonly Path[], number]>([
    ['no hole', [plate], [], 3000],
    ['two holes apart', [plate], [hole(-10, 610), hole(10, 610)], 3000 - 12.5 * Math.PI],
    ['a smaller hole in a larger one', [plate], [hole(0, 610), hole(0, 610, 1)], 3000 - 6.25 * Math.PI],
    ['half a hole over the edge', [plate], [hole(50, 615)], 3000 - 3.125 * Math.PI],
    ['a hole outside', [plate], [hole(80, 615)], 3000],
    ['a round plate', [hole(0, 615, 20)], [hole(5, 615)], 393.75 * Math.PI],
    [
      'two plates with a hole each',
      [plate, rectanglePath(60, 600, 10, 10)],
      [hole(0, 615), hole(65, 605, 1)],
      3100 - 7.25 * Math.PI,
    ],
    ['nothing', [], [hole(0, 0)], 0],
    ['a hole over all', [plate], [hole(0, 615, 100)], 0],
  ])('%s', async (_, outlines, holes, expected) => {
    expect(await area(outlines, holes)).toBeCloseTo(expected, 3);
    expect(await area(outlines.map(mirrorPath), holes.map(mirrorPath))).toBeCloseTo(expected, 3);
  });

  // Two circles of radius r at a distance d share 2 r² acos(d/2r) − (d/2) √(4r² − d²): here 12.5·acos(0.6) − 6 mm².
  it('counts once what two holes share', async () => {
    const shared = 12.5 * Math.acos(0.6) - 6;
    expect(await area([plate], [hole(0, 615), hole(3, 615)])).toBeCloseTo(3000 - 12.5 * Math.PI + shared, 3);
  });

  it('refuses open paths', async () => {
    const open = { ...plate, closed: false };
    expect(await areaWithout([open], [])).toMatchObject({ ok: false, issues: [{ code: 'path.open' }] });
    expect(await areaWithout([plate], [open])).toMatchObject({ ok: false, issues: [{ code: 'path.open' }] });
  });
});

describe('areaWithout without its library', () => {
  afterEach(() => {
    vi.doUnmock('clipper2-ts');
    vi.resetModules();
  });

  it('answers that it could not be loaded', async () => {
    vi.resetModules();
    vi.doMock('clipper2-ts', () => {
      throw new Error('offline');
    });
    const alone = await import('../../../../src/core/geom/offset/areaWithout');
    expect(await alone.areaWithout([plate], [])).toMatchObject({ ok: false, issues: [{ code: 'offset.notLoaded' }] });
  });
});
