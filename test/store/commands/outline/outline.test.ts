import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrawnOutline } from '../../../../src/core/document/outlineTypes';
import type { Project } from '../../../../src/core/document/types';
import { nodesOf } from '../../../../src/core/geom/edit/nodesOf';
import { shiftPath } from '../../../../src/core/geom/edit/shiftPath';
import type { Path } from '../../../../src/core/geom/types';
import { demoProject } from '../../../../src/core/kinds/demo';
import type { Result } from '../../../../src/core/result';
import { deleteNodes } from '../../../../src/store/commands/outline/deleteNodes';
import { drawFreely } from '../../../../src/store/commands/outline/drawFreely';
import { insertNode } from '../../../../src/store/commands/outline/insertNode';
import { makeSymmetric } from '../../../../src/store/commands/outline/makeSymmetric';
import { moveHandle } from '../../../../src/store/commands/outline/moveHandle';
import { moveNodes } from '../../../../src/store/commands/outline/moveNodes';
import { moveSegment } from '../../../../src/store/commands/outline/moveSegment';
import { outlineLabel } from '../../../../src/store/commands/outline/outlineLabel';
import { placeNodes } from '../../../../src/store/commands/outline/placeNodes';
import { roundCorner } from '../../../../src/store/commands/outline/roundCorner';
import { scaleOutline } from '../../../../src/store/commands/outline/scaleOutline';
import { setJoin } from '../../../../src/store/commands/outline/setJoin';
import { setNodePlace } from '../../../../src/store/commands/outline/setNodePlace';
import { setRadius } from '../../../../src/store/commands/outline/setRadius';
import { setSegmentKind } from '../../../../src/store/commands/outline/setSegmentKind';
import { setSymmetric } from '../../../../src/store/commands/outline/setSymmetric';
import { at, box, codeOf, expectMirrored, swelled, value, wordsOf } from '../../../core/geom/edit/outlines';
import { polygon } from '../../../core/geom/paths';
import { expectReversible } from '../../expectReversible';
import { MORNING } from '../../startStore';

const demo = demoProject('test', MORNING);

/** The demo with an outline drawn freely, its slot 6 behind the front edge. */
const withOutline = (path: Path, symmetric = true, changes: Partial<Project> = {}): Project => ({
  ...demo,
  ...changes,
  bridge: {
    ...demo.bridge,
    outline: { kind: 'drawn', path, symmetric },
    slot: { ...demo.bridge.slot, fromFront: 6 },
    locating: { ...demo.bridge.locating, site: 'free', points: { treble: at(12, 5), bass: at(-12, 7) } },
  },
});

const outlineOf = ({ bridge: { outline } }: Project): DrawnOutline => {
  if (outline.kind !== 'drawn') throw new Error('Expected an outline drawn freely.');
  return outline;
};

const places = (project: Project) => nodesOf(outlineOf(project).path).map((node) => node.at);

/** Runs a command on a store, with undo, redo and its file. */
const run = (start: Project, command: (project: Project) => Result<Project>): Project =>
  expectReversible('Outline changed', ({ change }) => expect(change('Outline changed', command)).toEqual([]), start);

describe('outline commands, each one step', () => {
  it('draw a shape freely, as it is', () => {
    const after = run(demo, drawFreely);
    expect(outlineOf(after).symmetric).toBe(true);
    expect(after.bridge.slot).toEqual(demo.bridge.slot);
    expect(codeOf(drawFreely(after))).toBe('outline.drawn');
  });

  it('turn a shape into a drawn outline within the first edit, and say so', () => {
    const before = value(drawFreely(demo));
    const after = run(demo, (project) => moveNodes(project, [2], at(1, 0.5)));
    expect(after.bridge).toEqual(value(moveNodes(before, [2], at(1, 0.5))).bridge);
    expect(outlineLabel(demo, 'Move node 3')).toBe('Outline drawn freely, move node 3');
    expect(outlineLabel(after, 'Move node 3')).toBe('Move node 3');
  });

  it('move nodes by one way', () => {
    const after = run(withOutline(swelled), (project) => moveNodes(project, [2, 3], at(2, 1)));
    expect(places(after)[2]).toEqual(at(37, 6));
    expect(places(after)[7]).toEqual(at(-37, 16));
    expect(codeOf(moveNodes(withOutline(swelled), [9], at(1, 1)))).toBe('outline.noNode');
    expect(codeOf(moveNodes(withOutline(swelled), [2], at(Number.NaN, 1)))).toBe('outline.place');
  });

  it('place nodes by exact x, y or both', () => {
    const start = withOutline(box, false);
    expect(places(run(start, (project) => setNodePlace(project, 2, { x: 22.5 })))[2]).toEqual(at(22.5, 20));
    expect(places(run(start, (project) => setNodePlace(project, 2, { y: 21 })))[2]).toEqual(at(20, 21));
    expect(places(run(start, (project) => setNodePlace(project, 2, { x: 1 / 3, y: 30 })))[2]).toEqual(at(1 / 3, 30));
    const level = new Map([
      [2, { y: 19 }],
      [3, { y: 19 }],
    ]);
    expect(places(run(start, (project) => placeNodes(project, level))).slice(2)).toEqual([at(20, 19), at(-20, 19)]);
    expect(codeOf(setNodePlace(start, 4, { x: 1 }))).toBe('outline.noNode');
  });

  it('move handles and segments', () => {
    const handled = run(withOutline(swelled), (project) => moveHandle(project, 4, 'after', at(18, 20)));
    expect(nodesOf(outlineOf(handled).path)[6]?.before).toEqual(at(-18, 20));
    const wider = run(withOutline(swelled), (project) => moveSegment(project, 2, at(3, 0)));
    expect([places(wider)[3], places(wider)[8]]).toEqual([at(38, 15), at(-38, 5)]);
  });

  it('add and take away nodes', () => {
    const more = run(withOutline(box), (project) => insertNode(project, 1, 0.5));
    expect(places(more)).toEqual([at(-20, 0), at(20, 0), at(20, 10), at(20, 20), at(-20, 20), at(-20, 10)]);
    const fewer = run(more, (project) => deleteNodes(project, [3]));
    expect(places(fewer)).toEqual([at(-20, 0), at(20, 0), at(20, 10), at(-20, 10)]);
  });

  it('set joins, kinds, radii and roundings', () => {
    const cornered = run(withOutline(swelled), (project) => setJoin(project, 5, 'corner'));
    expect(nodesOf(outlineOf(cornered).path)[5]?.join).toBe('corner');
    const arcs = run(withOutline(box), (project) => setSegmentKind(project, 1, 'arc', { size: { sagitta: 2 } }));
    expect(outlineOf(arcs).path.segments.map(({ kind }) => kind)).toEqual(['line', 'arc', 'line', 'arc']);
    const back = run(withOutline(box), (project) => setRadius(project, 2, 52));
    // Sagitta 4 over 40 (r = (400 + 16) / 8): the centre lies 48 ahead of the back edge.
    expect(outlineOf(back).path.segments[2]).toMatchObject({ centre: { x: 0, y: expect.closeTo(-28, 9) } });
    const round = run(withOutline(box), (project) => roundCorner(project, 2, 4));
    expect(places(round)).toHaveLength(6);
    expectMirrored(outlineOf(round).path);
  });

  it('make the outline symmetric, or let its sides go', () => {
    const lopsided = polygon([
      [-25, 0],
      [20, 0],
      [20, 20],
      [-25, 20],
    ]);
    const made = run(withOutline(lopsided, false), (project) => makeSymmetric(project, 'bass'));
    expect(outlineOf(made).symmetric).toBe(true);
    expect(places(made)).toContainEqual(at(25, 20));
    const free = run(made, (project) => setSymmetric(project, false));
    expect(outlineOf(free)).toEqual({ ...outlineOf(made), symmetric: false });
    expect(outlineOf(value(setSymmetric(free, true))).symmetric).toBe(true);
    expect(codeOf(setSymmetric(withOutline(lopsided, false), true))).toBe('outline.unpaired');
    expect(places(value(moveNodes(free, [1], at(1, 0)))).filter(({ x }) => x !== 0 && Math.abs(x) !== 25)).toHaveLength(
      1,
    );
  });

  it('scale the whole', () => {
    const after = run(withOutline(box), (project) => scaleOutline(project, { length: 50, proportional: true }));
    expect(places(after)[2]).toEqual(at(25, 25));
    expect(codeOf(scaleOutline(withOutline(box), { length: 501, proportional: false }))).toBe('outline.size');
  });
});

describe('the frame of the outline', () => {
  const pinned = withOutline(box, true, {
    dimensions: [
      {
        kind: 'distance',
        id: 'd1',
        way: 'along',
        from: { kind: 'point', at: at(3, 4) },
        to: { kind: 'part', part: 'node 2', feature: 'itself' },
      },
      {
        kind: 'angle',
        id: 'd2',
        from: { kind: 'point', at: at(9, 1) },
        corner: { kind: 'point', at: at(0, 2) },
        to: { kind: 'point', at: at(-9, 3) },
      },
      { kind: 'gap', id: 'd3', from: 'slot', to: 'footprint' },
    ],
  });

  it('moves with the front edge, and everything told from it the other way, so that nothing else moves', () => {
    const after = run(pinned, (project) => moveSegment(project, 0, at(0, -1.5)));
    expect(places(after)).toEqual([at(-20, 0), at(20, 0), at(20, 21.5), at(-20, 21.5)]);
    expect(after.bridge.slot).toEqual({ ...pinned.bridge.slot, fromFront: 7.5 });
    expect(after.bridge.locating.points).toEqual({ treble: at(12, 6.5), bass: at(-12, 8.5) });
    expect(after.dimensions[0]).toMatchObject({ from: { at: at(3, 5.5) }, to: { part: 'node 2' } });
    expect(after.dimensions[1]).toMatchObject({
      from: { at: at(9, 2.5) },
      corner: { at: at(0, 3.5) },
      to: { at: at(-9, 4.5) },
    });
    expect(after.dimensions[2]).toEqual(pinned.dimensions[2]);
  });

  it('follows the edge on the centreline alone', () => {
    const slanted = value(moveNodes(withOutline(box, false), [1], at(0, 2)));
    // The front rises from 0 to 2: on the centreline it lies at 1.
    expect(slanted.bridge.slot.fromFront).toBe(5);
    expect(places(slanted).slice(0, 2)).toEqual([at(-20, -1), at(20, 1)]);
    expect(outlineOf(value(moveNodes(withOutline(box, false), [2], at(0, 2)))).path.start).toEqual(at(-20, 0));
  });

  it('is where it was after there and back', () => {
    const way = fc.double({ min: -2, max: 2, noNaN: true });
    fc.assert(
      fc.property(fc.nat({ max: 8 }), way, way, (node, x, y) => {
        const start = withOutline(swelled);
        const there = moveNodes(start, [node], at(x, y));
        if (!there.ok) return;
        const back = value(moveNodes(there.value, [node], at(-x, -y)));
        expect(back.bridge.slot.fromFront).toBeCloseTo(6, 9);
        for (const [index, place] of places(back).entries()) {
          expect(place.x).toBeCloseTo(places(start)[index]?.x ?? Number.NaN, 9);
          expect(place.y).toBeCloseTo(places(start)[index]?.y ?? Number.NaN, 9);
        }
      }),
    );
  });

  it('takes an outline whose frame was off in with the first edit', () => {
    const off = withOutline(shiftPath(box, at(0, 2)));
    expect(value(moveNodes(off, [2], at(1, 0))).bridge.slot.fromFront).toBe(4);
  });
});

describe('pinned dimensions', () => {
  const to = (number: number) => ({ kind: 'part', part: `node ${number}`, feature: 'itself' }) as const;
  const pinned = withOutline(box, false, {
    dimensions: [
      { kind: 'distance', id: 'd1', way: 'straight', from: to(1), to: to(3) },
      { kind: 'distance', id: 'd2', way: 'straight', from: to(1), to: to(2) },
    ],
  });

  it('stay at their nodes when those get other numbers', () => {
    expect(value(insertNode(pinned, 0, 0.5)).dimensions).toEqual([
      { kind: 'distance', id: 'd1', way: 'straight', from: to(1), to: to(4) },
      { kind: 'distance', id: 'd2', way: 'straight', from: to(1), to: to(3) },
    ]);
  });

  it('go with a node that goes', () => {
    expect(value(deleteNodes(pinned, [2])).dimensions).toEqual([
      { kind: 'distance', id: 'd2', way: 'straight', from: to(1), to: to(2) },
    ]);
    expect(value(roundCorner(pinned, 2, 3)).dimensions.map(({ id }) => id)).toEqual(['d2']);
    expect(value(roundCorner(pinned, 1, 3)).dimensions).toEqual([
      { kind: 'distance', id: 'd1', way: 'straight', from: to(1), to: to(4) },
    ]);
  });
});

describe('what is refused', () => {
  it('an outline that crosses itself, unless it is a preview', () => {
    const start = withOutline(box, false);
    const crossed = moveNodes(start, [2], at(-60, -10));
    expect(codeOf(crossed)).toBe('outline.crossing');
    expect(wordsOf(crossed)).toContain('crosses or touches itself');
    expect(moveNodes(start, [2], at(-60, -10), 'preview').ok).toBe(true);
    expect(placeNodes(start, new Map([[2, at(-40, 10)]]), 'preview').ok).toBe(true);
    expect(codeOf(moveSegment(withOutline(swelled, false), 4, at(0, -40)))).toBe('outline.crossing');
    expect(moveSegment(withOutline(swelled, false), 4, at(0, -40), 'preview').ok).toBe(true);
    expect(codeOf(moveHandle(withOutline(swelled, false), 6, 'before', at(90, 20)))).toBe('outline.crossing');
    expect(moveHandle(withOutline(swelled, false), 6, 'before', at(90, 20), 'preview').ok).toBe(true);
  });

  it('a front edge too near to the slot or too far from it', () => {
    const near = moveSegment(withOutline(box), 0, at(0, 5.5));
    expect(codeOf(near)).toBe('field.range');
    expect(wordsOf(near)).toBe(
      'The slot would begin 0.50 mm behind the front edge. Front edge to slot goes from 1 mm to 60 mm.',
    );
    expect(moveSegment(withOutline(box), 0, at(0, 4.5)).ok).toBe(true);
    expect(codeOf(moveSegment(withOutline(box), 0, at(0, -55)))).toBe('field.range');
  });

  it('an outline beside the centreline', () => {
    expect(codeOf(moveNodes(withOutline(box, false), [0, 1, 2, 3], at(21, 0)))).toBe('outline.offCentre');
  });

  it('a side that the other has no partners for', () => {
    const uneven = polygon([
      [-20, 0],
      [20, 0],
      [20, 20],
      [0, 22],
      [-20, 20.5],
    ]);
    expect(codeOf(moveNodes(withOutline(uneven), [1], at(1, 0)))).toBe('outline.unpaired');
  });

  it('but not for a fault that was there before', () => {
    const bow = polygon([
      [-20, 0],
      [20, 0],
      [-20, 20],
      [20, 20],
    ]);
    const wide = polygon([
      [-20, 0],
      [20, 0],
      [-22, 20],
      [22, 20],
    ]);
    expect(
      places(
        value(
          placeNodes(
            withOutline(bow, false),
            new Map([
              [2, { x: -22 }],
              [3, { x: 22 }],
            ]),
          ),
        ),
      ),
    ).toEqual(nodesOf(wide).map((node) => node.at));
    expect(codeOf(moveNodes(withOutline(bow, false), [2, 3], at(0, 600)))).toBe('outline.size');
  });

  it('a shape whose dimensions do not go together', () => {
    const bad = {
      ...demo,
      bridge: { ...demo.bridge, outline: { shape: 'rectangular', parameters: { corner: 99 } } },
    } as const;
    expect(codeOf(moveNodes(bad, [0], at(1, 1)))).toBe('rectangular.corner');
  });
});
