import { describe, expect, it } from 'vitest';
import { circlePath } from '../../../../src/core/geom/circlePath';
import { mirrorPath } from '../../../../src/core/geom/mirrorPath';
import { areaWithout } from '../../../../src/core/geom/offset/areaWithout';
import { type PathsLeft, pathsWithout } from '../../../../src/core/geom/offset/pathsWithout';
import { rectanglePath } from '../../../../src/core/geom/rectanglePath';
import { signedArea } from '../../../../src/core/geom/signedArea';
import type { Path } from '../../../../src/core/geom/types';
import { jstsDifference } from './jstsDifference';

const left = async (outlines: readonly Path[], holes: readonly Path[]): Promise<PathsLeft> => {
  const found = await pathsWithout(outlines, holes);
  if (!found.ok) throw new Error(found.issues[0]?.message);
  return found.value;
};

/** 6 × 1 in, far from the origin, as a bridge lies from the nut. */
const bridge = rectanglePath(-76.2, 620, 152.4, 25.4);
const moved = (x: number, y: number): Path => rectanglePath(-76.2 + x, 620 + y, 152.4, 25.4);

describe('pathsWithout', () => {
  // Areas by hand: sides, and π r².
  it.each<[string, readonly Path[], readonly Path[], number, number]>([
    ['the same again', [bridge], [bridge], 0, 0],
    ['6 × 1 in under the same 2 mm farther back', [bridge], [moved(0, 2)], 152.4 * 2, 1],
    ['under the same 1 mm aside and 2 mm back', [bridge], [moved(1, 2)], 152.4 * 2 + 23.4, 1],
    ['under one a quarter inch shorter', [bridge], [rectanglePath(-73.025, 620, 146.05, 25.4)], 6.35 * 25.4, 2],
    ['a ring', [bridge], [circlePath({ x: 0, y: 632 }, 5)], 3870.96 - 25 * Math.PI, 2],
    ['nothing', [], [bridge], 0, 0],
    ['all', [bridge], [], 3870.96, 1],
  ])('%s', async (_, outlines, holes, area, rings) => {
    const found = await left(outlines, holes);
    expect(found.area).toBeCloseTo(area, 2);
    expect(found.outlines).toHaveLength(rings);
    // Outlines run clockwise and holes the other way, so that what they enclose adds up.
    expect(found.outlines.reduce((sum, path) => sum + signedArea(path), 0)).toBeCloseTo(area, 2);
    expect((await left(outlines.map(mirrorPath), holes.map(mirrorPath))).area).toBeCloseTo(area, 2);
  });

  it('leaves out what is thinner than curves stray', async () => {
    expect(await left([bridge], [moved(0, 1e-4)])).toEqual({ area: 0, outlines: [] });
  });

  it('refuses open paths', async () => {
    expect(await pathsWithout([{ ...bridge, closed: false }], [])).toMatchObject({
      ok: false,
      issues: [{ code: 'path.open' }],
    });
  });
});

/** Numbers in [0, 1) that are the same each time: the minimal standard generator of Park and Miller. */
const numbersFrom = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
};

/** An outline about as large as a bridge that crosses itself nowhere: corners at growing angles around its middle. */
const starOf = (next: () => number): readonly (readonly [number, number])[] => {
  const [x, y] = [20 * next() - 10, 630 + 10 * next()];
  return Array.from({ length: 14 }, (_, index) => {
    const angle = (index * 2 * Math.PI) / 14;
    const reach = 0.5 + next();
    return [x + 60 * reach * Math.cos(angle), y + 16 * reach * Math.sin(angle)] as const;
  });
};

const toPath = (corners: readonly (readonly [number, number])[]): Path => ({
  start: { x: corners[0]?.[0] ?? 0, y: corners[0]?.[1] ?? 0 },
  segments: corners.slice(1).map(([x, y]) => ({ kind: 'line', to: { x, y } })),
  closed: true,
});

describe('pathsWithout beside jsts', () => {
  const next = numbersFrom(20);
  const pairs = Array.from({ length: 20 }, (_, index) => ({ index, old: starOf(next), fresh: starOf(next) }));

  it.each(pairs)('pair $index', async ({ old, fresh }) => {
    const expected = jstsDifference(old, fresh);
    expect(expected).toBeGreaterThan(10);
    expect((await left([toPath(old)], [toPath(fresh)])).area).toBeCloseTo(expected, 3);
    const area = await areaWithout([toPath(old)], [toPath(fresh)]);
    expect(area).toEqual({ ok: true, value: expect.closeTo(expected, 3) });
  });
});
