import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moveNode } from '../../../../src/core/geom/edit/moveNode';
import { moveNodes } from '../../../../src/core/geom/edit/moveNodes';
import { moveSegment } from '../../../../src/core/geom/edit/moveSegment';
import { nodesOf } from '../../../../src/core/geom/edit/nodesOf';
import type { Path } from '../../../../src/core/geom/types';
import { arched, at, box, codeOf, expectMirrored, expectSame, flowing, swelled, value, wordsOf } from './outlines';

const arcOf = (path: Path, index: number) => {
  const segment = path.segments[index];
  if (segment?.kind !== 'arc') throw new Error(`Segment ${index} is no arc.`);
  return segment;
};

/** All expected places by hand arithmetic; arcs by r = (c²/4 + s²) / 2s for chord c and sagitta s (elementary geometry). */
describe('moveNodes', () => {
  it('moves a corner, and nothing else', () => {
    expect(value(moveNode(box, 1, at(25, -3)))).toEqual({
      start: at(-20, 0),
      segments: [at(25, -3), at(20, 20), at(-20, 20), at(-20, 0)].map((to) => ({ kind: 'line', to })),
      closed: true,
    });
  });

  it('moves the start with node 0, wherever it stands', () => {
    const moved = value(moveNode(box, 0, at(-22, 1)));
    expect(moved.start).toEqual(at(-22, 1));
    expect(moved.segments.at(-1)?.to).toEqual(at(-22, 1));
  });

  it('takes the handles of curves along with their node', () => {
    const moved = value(moveNode(flowing, 2, at(23, 11)));
    expect(moved.segments[1]).toEqual({ kind: 'cubic', c1: at(14, 0), c2: at(23, 7), to: at(23, 11) });
    expect(moved.segments[2]).toEqual({ kind: 'cubic', c1: at(23, 14), c2: at(17, 20), to: at(10, 20) });
  });

  it('turns a handle with the line that it runs on from', () => {
    // The line from (10, −10) to (10, 0) runs along +y: the handle of length 4 does too.
    const { segments } = value(moveNode(flowing, 0, at(10, -10)));
    const curve = segments[1];
    expect(curve?.kind).toBe('cubic');
    if (curve?.kind !== 'cubic') return;
    expect(curve.c1.x).toBeCloseTo(10, 12);
    expect(curve.c1.y).toBeCloseTo(4, 12);
    expect(curve.c2).toEqual(at(20, 6));
  });

  it('turns a handle with the line that it runs into', () => {
    // From node 3 at (10, 20) the line to (0, 20) ran along −x; to (10, 30) it runs along +y: (7, 0) becomes (0, −7).
    const { segments } = value(moveNode(flowing, 4, at(10, 30)));
    const curve = segments[2];
    if (curve?.kind !== 'cubic') throw new Error('Expected a curve.');
    expect(curve.c2.x).toBeCloseTo(10, 12);
    expect(curve.c2.y).toBeCloseTo(13, 12);
  });

  it('leaves the handle at a corner beside a line as it is', () => {
    const kinked: Path = {
      ...flowing,
      segments: flowing.segments.map((each, index) =>
        index === 1 && each.kind === 'cubic' ? { ...each, c1: at(13, 3) } : each,
      ),
    };
    expect(value(moveNode(kinked, 0, at(10, -10))).segments[1]).toEqual(kinked.segments[1]);
  });

  it('turns no handle between two curves', () => {
    // Without a handle of its own the second curve leaves toward its other one, straight on: smooth.
    const bare: Path = {
      ...flowing,
      segments: flowing.segments.map((each, index) =>
        index === 2 && each.kind === 'cubic' ? { ...each, c1: at(20, 10), c2: at(20, 18) } : each,
      ),
    };
    expect(nodesOf(bare)[2]?.join).toBe('smooth');
    expect(value(moveNode(bare, 2, at(24, 10))).segments[1]).toMatchObject({ c2: at(24, 6) });
  });

  it('keeps the radius of an arc while its ends are near enough', () => {
    // r 5 over a chord of 8: the centre lies 3 off; over 10 it lies on the chord.
    expect(arcOf(value(moveNode(arched, 1, at(8, 0))), 0).centre).toEqual(at(4, 3));
    expect(arcOf(value(moveNode(arched, 1, at(10, 0))), 0).centre).toEqual(at(5, 0));
  });

  it('keeps the share that the sagitta has of the chord when they are not', () => {
    // 1 over 6 becomes 2 over 12: r = (36 + 4) / 4 = 10, the centre 8 off.
    const arc = arcOf(value(moveNode(arched, 1, at(12, 0))), 0);
    expect(arc.centre.x).toBeCloseTo(6, 12);
    expect(arc.centre.y).toBeCloseTo(8, 12);
  });

  it('keeps the greater part of a circle the greater part', () => {
    const major: Path = {
      ...arched,
      segments: [{ kind: 'arc', to: at(6, 0), centre: at(3, -4), clockwise: true }, ...arched.segments.slice(1)],
    };
    expect(arcOf(value(moveNode(major, 1, at(8, 0))), 0).centre).toEqual(at(4, -3));
  });

  it('moves an arc as it is when both of its ends move alike', () => {
    const moved = value(
      moveNodes(
        arched,
        new Map([
          [0, at(1, -2)],
          [1, at(7, -2)],
        ]),
      ),
    );
    expect(arcOf(moved, 0).centre).toEqual(at(4, 2));
    // A half circle, by figures that do not come out even: its centre is found from nothing but the way.
    const half: Path = {
      start: at(-0.7, 0),
      segments: [
        { kind: 'arc', to: at(0.7, 0), centre: at(0, 0), clockwise: true },
        { kind: 'line', to: at(0.7, 9) },
      ],
      closed: true,
    };
    const { centre } = arcOf(value(moveSegment(half, 0, at(0.1, 0.3))), 0);
    expect([centre.x, centre.y]).toEqual([expect.closeTo(0.1, 13), expect.closeTo(0.3, 13)]);
  });

  it('takes an end within rounding of the start for the start', () => {
    // The arc ends 0.8 nm beside the start, and its radii differ by as much: together more than an arc may bear.
    const rough: Path = {
      start: at(0, -1.6e-6),
      segments: [
        { kind: 'line', to: at(20, 0) },
        { kind: 'line', to: at(5, 5) },
        { kind: 'arc', to: at(0, -8e-7), centre: at(0, 5), clockwise: false },
      ],
      closed: true,
    };
    const moved = value(moveNode(rough, 1, at(21, 0)));
    expect(moved.segments.at(-1)?.to).toEqual(rough.start);
    expect(arcOf(moved, 2).centre.y).toBeCloseTo(5, 5);
  });

  it('refuses an arc without length, places that are none, and nodes that are not there', () => {
    const shrunk = moveNode(arched, 1, at(0, 0));
    expect(codeOf(shrunk)).toBe('outline.onNode');
    expect(wordsOf(shrunk)).toContain('Nodes 1 and 2');
    expect(codeOf(moveNode(box, 0, at(Number.NaN, 0)))).toBe('outline.place');
    expect(codeOf(moveNode(box, 4, at(0, 0)))).toBe('outline.noNode');
    expect(codeOf(moveNode(box, -1, at(0, 0)))).toBe('outline.noNode');
    expect(codeOf(moveNode(box, 0.5, at(0, 0)))).toBe('outline.noNode');
    expect(codeOf(moveNode({ ...box, closed: false }, 0, at(0, 0)))).toBe('path.open');
  });

  it('there and back is where it was', () => {
    const way = fc.double({ min: -2, max: 2, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(box, swelled, flowing), fc.nat({ max: 20 }), way, way, (path, number, dx, dy) => {
        const nodes = nodesOf(path);
        const node = nodes[number % nodes.length];
        if (node === undefined) return;
        const moved = value(moveNode(path, node.index, at(node.at.x + dx, node.at.y + dy)));
        const closed = value(moveNode(path, node.index, node.at));
        expectSame(value(moveNode(moved, node.index, node.at)), closed);
      }),
    );
  });
});

describe('moveNodes on a symmetric outline', () => {
  it('moves the partner as the mirror image', () => {
    const moved = value(moveNode(box, 1, at(25, -3), true));
    expect(moved.start).toEqual(at(-25, -3));
    expect(moved.segments[0]?.to).toEqual(at(25, -3));
    expectMirrored(moved);
  });

  it('follows whichever side is moved', () => {
    const moved = value(moveNode(swelled, 7, at(-37, 14), true));
    expect(nodesOf(moved)[7]?.at).toEqual(at(-37, 14));
    expect(nodesOf(moved)[3]?.at).toEqual(at(37, 14));
    expectMirrored(moved);
  });

  it('keeps a node on the centreline on it, and moves it along', () => {
    const moved = value(moveNode(swelled, 5, at(3, 31), true));
    expect(nodesOf(moved)[5]?.at).toEqual(at(0, 31));
    expect(nodesOf(moved)[5]?.before).toEqual(at(12, 31));
    expectMirrored(moved);
  });

  it('takes the first of two partners', () => {
    const places = new Map([
      [3, at(36, 15)],
      [7, at(-50, 15)],
    ]);
    expect(nodesOf(value(moveNodes(swelled, places, true)))[7]?.at).toEqual(at(-36, 15));
  });

  it('mends sides that differ within a hundredth, and refuses others', () => {
    expectMirrored(value(moveNode(value(moveNode(box, 0, at(-20.005, 0))), 1, at(21, 0), true)));
    expect(codeOf(moveNode(value(moveNode(box, 0, at(-20.02, 0))), 1, at(21, 0), true))).toBe('outline.unpaired');
  });
});

describe('moveSegment', () => {
  it('moves both ends, and the handles and centres with them', () => {
    const moved = value(moveSegment(swelled, 4, at(1, 2)));
    expect(moved.segments[4]).toMatchObject({ c2: at(13, 30), to: at(1, 30) });
    expect(moved.segments[3]?.to).toEqual(at(31, 22));
    expect(moved.segments[5]).toEqual({ kind: 'cubic', c1: at(-11, 30), c2: at(-20, 20), to: at(-30, 20) });
    expect(value(moveSegment(arched, 0, at(1, -2))).segments[0]).toEqual({
      kind: 'arc',
      to: at(7, -2),
      centre: at(4, 2),
      clockwise: true,
    });
  });

  it('moves the last segment, whose end is node 0', () => {
    const moved = value(moveSegment(box, 3, at(-5, 0)));
    expect(nodesOf(moved).map((node) => node.at)).toEqual([at(-25, 0), at(20, 0), at(20, 20), at(-25, 20)]);
  });

  it('moves the partner too, and one across the centreline only along it', () => {
    const wider = value(moveSegment(swelled, 2, at(4, 0), true));
    expect(nodesOf(wider)[8]?.at).toEqual(at(-39, 5));
    expectMirrored(wider);
    const ahead = value(moveSegment(swelled, 0, at(9, -2), true));
    expect(
      nodesOf(ahead)
        .slice(0, 2)
        .map((node) => node.at),
    ).toEqual([at(-30, -2), at(30, -2)]);
    expectMirrored(ahead);
  });

  it('refuses a segment that is not there', () => {
    expect(wordsOf(moveSegment(box, 4, at(1, 0)))).toContain('no segment 5');
  });
});
