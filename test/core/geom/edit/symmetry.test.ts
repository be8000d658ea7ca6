import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deleteNode } from '../../../../src/core/geom/edit/deleteNodes';
import { insertNode } from '../../../../src/core/geom/edit/insertNode';
import { isSymmetric, mirrorNode } from '../../../../src/core/geom/edit/isSymmetric';
import { makeSymmetric } from '../../../../src/core/geom/edit/makeSymmetric';
import { moveHandle } from '../../../../src/core/geom/edit/moveHandle';
import { moveNode } from '../../../../src/core/geom/edit/moveNode';
import { moveSegment } from '../../../../src/core/geom/edit/moveSegment';
import { nodesOf } from '../../../../src/core/geom/edit/nodesOf';
import { roundCorner } from '../../../../src/core/geom/edit/roundCorner';
import { scaleOutline } from '../../../../src/core/geom/edit/scaleOutline';
import { setJoin } from '../../../../src/core/geom/edit/setJoin';
import { setRadius } from '../../../../src/core/geom/edit/setRadius';
import { setSegmentKind } from '../../../../src/core/geom/edit/setSegmentKind';
import { pathArea } from '../../../../src/core/geom/pathArea';
import { signedArea } from '../../../../src/core/geom/signedArea';
import type { Path } from '../../../../src/core/geom/types';
import { ok, type Result } from '../../../../src/core/result';
import { polygon } from '../paths';
import { at, box, codeOf, expectMirrored, expectSame, flowing, swelled, value, wordsOf } from './outlines';

const places = (path: Path) => nodesOf(path).map((node) => node.at);

describe('isSymmetric', () => {
  it('wants a partner for every node and segment, within the tolerance', () => {
    expect(isSymmetric(swelled, 0)).toBe(true);
    expect(isSymmetric(box, 0)).toBe(true);
    expect(isSymmetric(flowing, 1)).toBe(false);
    const off = value(moveNode(box, 1, at(20.2, 0)));
    expect(isSymmetric(off, 0.19)).toBe(false);
    expect(isSymmetric(off, 0.21)).toBe(true);
    expect(isSymmetric(value(insertNode(box, 1, 0.5)).path, 1)).toBe(false);
    expect(isSymmetric({ ...box, closed: false }, 1)).toBe(false);
  });

  it('looks at handles, at how far arcs stand off, and at kinds', () => {
    expect(isSymmetric(value(moveHandle(swelled, 4, 'after', at(19, 20))), 0.5)).toBe(false);
    expect(isSymmetric(value(setRadius(swelled, 2, 40)), 0.2)).toBe(false);
    const flat = setRadius(value(setRadius(swelled, 2, 40)), 7, 40, 'inward');
    expect(isSymmetric(value(flat), 0.2)).toBe(false);
    expect(isSymmetric(value(setSegmentKind(swelled, 2, 'curve')).path, 1)).toBe(false);
  });

  it('tells partners by number', () => {
    expect([0, 1, 2, 3, 4, 5, 6, 7, 8].map((index) => mirrorNode(swelled, index, 0))).toEqual([
      1, 0, 8, 7, 6, 5, 4, 3, 2,
    ]);
    expect(mirrorNode(swelled, 9, 0)).toBeNull();
    expect(mirrorNode(flowing, 0, 0.01)).toBeNull();
  });
});

/** Farther out on its treble side, its back edge sloping. */
const lopsided = polygon([
  [-10, 0],
  [20, 0],
  [20, 20],
  [-10, 35],
]);

describe('makeSymmetric', () => {
  it('mirrors the treble half, with nodes on the centreline', () => {
    const { path, went, added } = value(makeSymmetric(lopsided, 'treble'));
    // The back falls by 15 over 30: at x 0 it is at 30.
    expect(places(path)).toEqual([at(0, 0), at(20, 0), at(20, 20), at(0, 30), at(-20, 20), at(-20, 0)]);
    expect([went, added]).toEqual([
      [null, 1, 2, null],
      [0, 3, 4, 5],
    ]);
    expectMirrored(path);
    expect(signedArea(path)).toBe(1000);
  });

  it('mirrors the bass half', () => {
    const { path, went } = value(makeSymmetric(lopsided, 'bass'));
    expect(places(path)).toEqual([at(0, 30), at(-10, 35), at(-10, 0), at(0, 0), at(10, 0), at(10, 35)]);
    expect(went).toEqual([2, null, null, 1]);
    // Twice ½·10·(30 + 35).
    expect(signedArea(path)).toBe(650);
    expectMirrored(path);
  });

  it('keeps an outline that runs the other way running so', () => {
    const back = polygon([
      [-10, 35],
      [20, 20],
      [20, 0],
      [-10, 0],
    ]);
    expect(signedArea(value(makeSymmetric(back, 'treble')).path)).toBe(-1000);
  });

  it('cuts arcs and curves where they cross', () => {
    const path: Path = {
      start: at(-4, 3),
      segments: [
        // About (0, 6), r 5, over (0, 1).
        { kind: 'arc', to: at(3, 2), centre: at(0, 6), clockwise: true },
        { kind: 'line', to: at(12, 20) },
        { kind: 'cubic', c1: at(8, 24), c2: at(-4, 24), to: at(-12, 22) },
      ],
      closed: true,
    };
    const made = value(makeSymmetric(path, 'treble')).path;
    const start = nodesOf(made)[0];
    expect(start?.at.x).toBe(0);
    expect(start?.at.y).toBeCloseTo(1, 12);
    expect(made.segments.map(({ kind }) => kind)).toEqual(['arc', 'line', 'cubic', 'cubic', 'line', 'arc']);
    expectMirrored(made);
    expect(isSymmetric(made, 1e-9)).toBe(true);
  });

  it('keeps every node of an outline that is symmetric all but exactly', () => {
    const rough = value(moveNode(swelled, 3, at(35.004, 15)));
    const { path, went, added } = value(makeSymmetric(rough, 'bass'));
    expect(went).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
    expect(added).toEqual([]);
    expect(places(path)[3]).toEqual(at(35, 15));
    expect(places(value(makeSymmetric(rough, 'treble')).path)[7]).toEqual(at(-35.004, 15));
    expectMirrored(path);
    expect(value(makeSymmetric(swelled, 'treble')).path).toEqual(swelled);
  });

  it('takes the curve across the centreline from the side that is kept', () => {
    const bowed = (treble: number, bass: number): Path => ({
      start: at(-20, 0),
      segments: [
        { kind: 'line', to: at(20, 0) },
        { kind: 'line', to: at(20, 20) },
        { kind: 'cubic', c1: at(8, treble), c2: at(-8, bass), to: at(-20, 20) },
        { kind: 'line', to: at(-20, 0) },
      ],
      closed: true,
    });
    expect(value(makeSymmetric(bowed(25, 25.006), 'treble')).path).toEqual(bowed(25, 25));
    expect(value(makeSymmetric(bowed(25, 25.006), 'bass')).path).toEqual(bowed(25.006, 25.006));
  });

  it('puts nodes that all but lie on the centreline on it', () => {
    const { path, added } = value(
      makeSymmetric(
        polygon([
          [0.008, 0],
          [20, 0],
          [15, 20],
          [-0.004, 24],
          [-20, 20],
        ]),
        'treble',
      ),
    );
    expect(places(path)).toEqual([at(0, 0), at(20, 0), at(15, 20), at(0, 24), at(-15, 20), at(-20, 0)]);
    expect(added).toEqual([4, 5]);
  });

  it('is refused when the centreline is not crossed just twice', () => {
    const beside = polygon([
      [5, 0],
      [20, 0],
      [20, 20],
    ]);
    expect(codeOf(makeSymmetric(beside, 'treble'))).toBe('outline.crossings');
    expect(wordsOf(makeSymmetric(beside, 'treble'))).toContain('0 times');
    const hooked = polygon([
      [-20, 0],
      [20, 0],
      [20, 10],
      [-10, 10],
      [-10, 15],
      [20, 15],
      [20, 20],
      [-20, 20],
    ]);
    expect(wordsOf(makeSymmetric(hooked, 'treble'))).toContain('4 times');
  });
});

describe('edits of a symmetric outline', () => {
  it('leave it symmetric to the last bit, whatever they are', () => {
    const way = fc.double({ min: -3, max: 3, noNaN: true });
    const edit = fc.record({
      what: fc.constantFrom(
        'move',
        'handle',
        'segment',
        'insert',
        'delete',
        'join',
        'kind',
        'radius',
        'round',
        'scale',
      ),
      number: fc.nat({ max: 60 }),
      dx: way,
      dy: way,
      share: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
    });
    type Edit = typeof edit extends fc.Arbitrary<infer E> ? E : never;
    const run = (path: Path, { what, number, dx, dy, share }: Edit): Result<Path> => {
      const nodes = nodesOf(path);
      const index = number % nodes.length;
      const node = nodes[index];
      if (node === undefined) return ok(path);
      const of = (made: Result<{ readonly path: Path }>): Result<Path> => (made.ok ? ok(made.value.path) : made);
      switch (what) {
        case 'move':
          return moveNode(path, index, at(node.at.x + dx, node.at.y + dy), true);
        case 'handle': {
          const side = number % 2 === 0 ? 'before' : 'after';
          const handle = node[side] ?? node.at;
          return moveHandle(path, index, side, at(handle.x + dx, handle.y + dy), true);
        }
        case 'segment':
          return moveSegment(path, index, at(dx, dy), true);
        case 'insert':
          return of(insertNode(path, index, share, true));
        case 'delete':
          return of(deleteNode(path, index, true));
        case 'join':
          return setJoin(path, index, number % 2 === 0 ? 'corner' : 'smooth', true);
        case 'kind': {
          const kind = (['line', 'arc', 'curve'] as const)[number % 3];
          return of(setSegmentKind(path, index, kind ?? 'line', {}, true));
        }
        case 'radius':
          return setRadius(path, index, 20 + 60 * share, number % 2 === 0 ? 'outward' : 'inward', true);
        case 'round':
          return of(roundCorner(path, index, 4 * share, true));
        case 'scale':
          return of(scaleOutline(path, { length: 60 + 20 * share, proportional: number % 2 === 0 }, true));
      }
    };
    const done = new Map<string, number>();
    fc.assert(
      fc.property(fc.constantFrom(box, swelled), fc.array(edit, { minLength: 1, maxLength: 8 }), (first, edits) => {
        let path = first;
        for (const each of edits) {
          const next = run(path, each);
          if (!next.ok) {
            // A wild sequence may bring nodes so near to one another that partners cannot be told: nothing is changed then.
            continue;
          }
          done.set(each.what, (done.get(each.what) ?? 0) + 1);
          path = next.value;
          expectMirrored(path);
        }
      }),
      { numRuns: 300 },
    );
    // Every kind of edit went through at least now and then.
    expect([...done].filter(([, times]) => times < 5)).toEqual([]);
    expect(done.size).toBe(10);
  });

  it('make the same of an outline as both sides done by hand', () => {
    const both = value(moveNode(swelled, 4, at(28, 22), true));
    const hand = value(moveNode(value(moveNode(swelled, 4, at(28, 22))), 6, at(-28, 22)));
    expectSame(both, hand, 1e-12);
    expect(pathArea(both)).toBeCloseTo(pathArea(hand), 9);
  });
});
