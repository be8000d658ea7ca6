import { describe, expect, it } from 'vitest';
import type { BridgeMarks } from '../../../../src/core/drawing/nodes/bridgeMarks';
import { nodeSnaps } from '../../../../src/core/drawing/nodes/nodeSnaps';
import { footprintSnaps, locatingSnaps, pinSnaps } from '../../../../src/core/drawing/nodes/partSnaps';
import { snapPoint } from '../../../../src/core/geom/snap/snapPoint';
import type { Path } from '../../../../src/core/geom/types';

/** A bridge of 150 by 30 with its slot 9 to 12 behind the front edge, 74 long; by hand, no source needed. */
const MARKS: BridgeMarks = {
  slotEnds: { treble: { x: 37, y: 10 }, bass: { x: -37, y: 11 } },
  slotFront: 9,
  slotBack: 12,
  back: 30,
  strings: { treble: 27, bass: -26 },
};

/** Six nodes: 1 front bass, 2 front treble, 3 back treble tip, 4 back middle treble, 5 back middle bass, 6 back bass tip. */
const OUTLINE: Path = {
  start: { x: -75, y: 0 },
  segments: [
    { kind: 'line', to: { x: 75, y: 0 } },
    { kind: 'line', to: { x: 70, y: 20 } },
    { kind: 'line', to: { x: 30, y: 30 } },
    { kind: 'line', to: { x: -30, y: 30 } },
    { kind: 'line', to: { x: -70, y: 20 } },
    { kind: 'line', to: { x: -75, y: 0 } },
  ],
  closed: true,
};

const show = (mm: number): string => `${mm.toFixed(1)} mm`;
const snapsOf = (index: number, along: readonly number[] = []) =>
  nodeSnaps({ path: OUTLINE, index, along, marks: MARKS, show });
const reasonsAt = (index: number, x: number, y: number, along: readonly number[] = []) =>
  snapPoint({ x, y }, snapsOf(index, along), 0.5).reasons;

describe('nodeSnaps', () => {
  it.each([
    ['the centreline', 3, 0.2, 50, 'on the centreline'],
    ['the front edge', 3, 50, -0.2, 'in line with the front edge'],
    ['the height of another node', 0, -66, 29.8, 'level with node 4'],
    ['the line of another node along the strings', 1, 29.8, 14.4, 'straight ahead or behind node 4'],
    ['as far out on the other side', 3, 69.8, 44, 'straight ahead or behind node 3'],
    ['the end of the slot', 3, 36.8, 44, 'in line with the treble end of the slot'],
  ])('offers %s', (_, index, x, y, reason) => {
    expect(reasonsAt(index, x, y)).toContain(reason);
  });

  it('names a node on the other side as one as far out', () => {
    const line = snapsOf(2).find(({ reason }) => reason === 'as far out as node 6');
    // Node 6 lies at −70; the treble side of that is 70.
    expect(line).toMatchObject({ kind: 'x', value: 70 });
  });

  it('says which margins come out equal, and how large', () => {
    // The bass side stands 75 − 37 = 38 beyond the slot; 37 + 38 = 75 does the same at the treble.
    expect(reasonsAt(1, 74.9, 4.4)).toEqual(['margins equal: 38.0 mm both sides']);
    // 9 ahead of the slot; 12 + 9 = 21 leaves as much behind it.
    expect(reasonsAt(3, 52.2, 21.2)).toEqual(['margins equal: 9.0 mm both sides']);
  });

  it('carries on the sides beside its neighbours', () => {
    // Node 3 is moved. Node 2 is reached along the front edge: y = 0. Node 4 is left along y = 30.
    const straight = snapsOf(2).filter(({ reason }) => reason.startsWith('straight on from'));
    expect(straight.map(({ reason }) => reason)).toEqual(['straight on from node 2', 'straight on from node 4']);
    // Node 4 is moved: node 3 is reached by (−5, 20); 5 further on, from (70, 20), lies (68.75, 25).
    const { at, reasons } = snapPoint({ x: 68.9, y: 25.1 }, snapsOf(3), 0.5);
    expect(reasons[0]).toBe('straight on from node 3');
    expect((at.x - 70) / -5).toBeCloseTo((at.y - 20) / 20, 9);
  });

  it('never lines a node up with itself or with what moves along', () => {
    const named = (lines: readonly { reason: string }[]) => lines.map(({ reason }) => reason).join();
    expect(named(snapsOf(2))).not.toMatch(/(with|behind|out as) node 3/);
    expect(named(snapsOf(2, [5]))).not.toMatch(/(with|behind|out as) node 6/);
  });

  it('says each line once, for the weightiest reason', () => {
    const values = snapsOf(3).flatMap((line) => (line.kind === 'line' ? [] : [`${line.kind} ${line.value}`]));
    expect(new Set(values).size).toBe(values.length);
    expect(snapsOf(3).find((line) => line.kind === 'y' && line.value === 0)?.reason).toBe(
      'in line with the front edge',
    );
  });
});

describe('snaps of other parts', () => {
  it('the bridge stands with as much wood ahead of the slot as behind it', () => {
    // 9 ahead and 18 behind: 13.5 each, so the front edge goes 4.5 toward the nut.
    expect(footprintSnaps(MARKS, show)).toEqual([
      { kind: 'y', value: -4.5, reason: 'margins equal: 13.5 mm both sides' },
    ]);
  });

  it('the pin row stands midway between slot and back edge, a pin 1.2 behind its row with it', () => {
    // (12 + 30) / 2 = 21.
    const lines = pinSnaps(MARKS, 1.2, show);
    expect(lines[0]).toEqual({ kind: 'y', value: 22.2, reason: 'margins equal: 9.0 mm both sides' });
    expect(lines).toContainEqual({ kind: 'x', value: 27, reason: 'in line with the outer treble string' });
    expect(lines).toContainEqual({ kind: 'x', value: -26, reason: 'in line with the outer bass string' });
  });

  it('a free locating pin goes level with its fellow and as far out', () => {
    const lines = locatingSnaps(MARKS, { x: -60, y: 14 });
    expect(lines).toContainEqual({ kind: 'x', value: 60, reason: 'as far out as the other locating pin' });
    expect(lines).toContainEqual({ kind: 'y', value: 14, reason: 'level with the other locating pin' });
    expect(locatingSnaps(MARKS, null)).toHaveLength(3);
  });
});
