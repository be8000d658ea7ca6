import { describe, expect, it } from 'vitest';
import { offsetPath } from '../../../../src/core/geom/offset/offsetPath';
import { signedArea } from '../../../../src/core/geom/signedArea';
import { OFFSET_LIMITS } from '../../../reference/offset';
import { chordCorners, extrapolated, sampledAlong } from '../../../reference/offsetChords';
import { OFFSET_CASES, type OffsetCase } from '../../../reference/offsetOutlines';
import { jstsDistance, jstsOffset } from './jstsOffset';

const STRAY = 2e-3;

function byJsts({ path, distance }: OffsetCase) {
  const coarse = jstsOffset(chordCorners(path, STRAY, 1), distance, 100);
  const fine = jstsOffset(chordCorners(path, STRAY, 2), distance, 200);
  return { area: extrapolated(coarse.area, fine.area), rings: fine.rings };
}

const turns = ({ path }: OffsetCase): number[] => {
  const corners = chordCorners(path, STRAY, 1);
  return corners.map(([x, y], index) => {
    const [x0 = 0, y0 = 0] = corners.at(index - 1) ?? [];
    const [x1 = 0, y1 = 0] = corners[(index + 1) % corners.length] ?? [];
    return (x - x0) * (y1 - y) - (y - y0) * (x1 - x);
  });
};

const isConcave = (one: OffsetCase): boolean => {
  const all = turns(one);
  return all.some((turn) => turn > 1e-9) && all.some((turn) => turn < -1e-9);
};

const hasKind = ({ path }: OffsetCase, kind: string): boolean => path.segments.some((segment) => segment.kind === kind);

describe('offsetPath beside jsts', () => {
  it('is tried on enough outlines of every sort', () => {
    const counts = {
      outlines: OFFSET_CASES.length,
      'with arcs and cubics': OFFSET_CASES.filter((one) => hasKind(one, 'arc') && hasKind(one, 'cubic')).length,
      concave: OFFSET_CASES.filter(isConcave).length,
      'split or vanish': OFFSET_CASES.filter((one) => byJsts(one).rings !== 1).length,
    };
    console.info(`Outlines to offset: ${JSON.stringify(counts)}`);
    expect(counts.outlines).toBe(50);
    expect(counts['with arcs and cubics']).toBeGreaterThanOrEqual(20);
    expect(counts.concave).toBeGreaterThanOrEqual(15);
    expect(counts['split or vanish']).toBeGreaterThanOrEqual(10);
  });

  it.each(OFFSET_CASES)('agrees in area, rings and distance: $name by $distance', async (one) => {
    const { path, distance } = one;
    const found = await offsetPath(path, distance);
    if (!found.ok) throw new Error(found.issues[0]?.message);
    const { area, rings } = byJsts(one);
    expect(found.value).toHaveLength(rings);
    const sum = found.value.reduce((total, outline) => total + signedArea(outline), 0);
    expect(Math.abs(sum - area)).toBeLessThan(OFFSET_LIMITS.area);
    const away = jstsDistance(chordCorners(path, STRAY, 4));
    const misses = found.value.flatMap((outline) =>
      sampledAlong(outline).map((point) => Math.abs(away(point) - Math.abs(distance))),
    );
    expect(Math.max(0, ...misses)).toBeLessThan(OFFSET_LIMITS.distance);
  });
});
