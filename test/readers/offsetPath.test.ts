import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { offsetPath } from '../../src/core/geom/offset/offsetPath';
import { signedArea } from '../../src/core/geom/signedArea';
import type { Path } from '../../src/core/geom/types';
import { OFFSET_LIMITS } from '../reference/offset';
import { chordCorners, extrapolated, sampledAlong } from '../reference/offsetChords';
import { OFFSET_CASES } from '../reference/offsetOutlines';

interface Answer {
  readonly area: number;
  readonly rings: number;
  readonly misses: readonly number[];
}

const STRAY = 2e-3;
const script = fileURLToPath(new URL('offset_by_shapely.py', import.meta.url));

/** Debian's Python, which is the one that sees Debian's Shapely. */
const askShapely = (cases: readonly object[]): Answer[] =>
  JSON.parse(
    execFileSync('/usr/bin/python3', [script], { input: JSON.stringify(cases), encoding: 'utf8', maxBuffer: 64e6 }),
  );

describe('offsetPath beside Shapely', () => {
  const found: (readonly Path[])[] = [];
  let coarse: Answer[] = [];
  let fine: Answer[] = [];

  beforeAll(async () => {
    for (const { path, distance } of OFFSET_CASES) {
      const answer = await offsetPath(path, distance);
      if (!answer.ok) throw new Error(answer.issues[0]?.message);
      found.push(answer.value);
    }
    const chords = (finer: number) =>
      OFFSET_CASES.map(({ path, distance }, index) => ({
        corners: chordCorners(path, STRAY, finer),
        distance,
        points: finer === 1 ? [] : (found[index] ?? []).flatMap(sampledAlong),
      }));
    coarse = askShapely(chords(1));
    fine = askShapely(chords(2));
  }, 120_000);

  it.each(OFFSET_CASES.map((one, index) => ({ ...one, index })))(
    'agrees in area, rings and distance: $name by $distance',
    ({ index }) => {
      const outlines = found[index] ?? [];
      const [one, other] = [coarse[index], fine[index]];
      expect(outlines).toHaveLength(other?.rings ?? Number.NaN);
      const sum = outlines.reduce((total, outline) => total + signedArea(outline), 0);
      const area = extrapolated(one?.area ?? Number.NaN, other?.area ?? Number.NaN);
      expect(Math.abs(sum - area)).toBeLessThan(OFFSET_LIMITS.area);
      expect(Math.max(0, ...(other?.misses ?? [Number.NaN]))).toBeLessThan(OFFSET_LIMITS.distance);
    },
  );
});
