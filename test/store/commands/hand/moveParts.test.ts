import { describe, expect, it } from 'vitest';
import type { Project } from '../../../../src/core/document/types';
import type { Path } from '../../../../src/core/geom/types';
import { demoProject } from '../../../../src/core/kinds/demo';
import { lineUp } from '../../../../src/store/commands/hand/lineUp';
import { moveParts } from '../../../../src/store/commands/hand/moveParts';
import { partsInWords } from '../../../../src/store/commands/hand/partsInWords';
import { spreadEvenly } from '../../../../src/store/commands/hand/spreadEvenly';
import { expectReversible } from '../../expectReversible';
import { MORNING } from '../../startStore';

const demo = demoProject('test', MORNING);
const { pins, slot } = demo.bridge;
if (pins === null) throw new Error('the demo has pins');

/** Node 1 front bass, 2 front treble, 3 back treble, 4 back middle, 5 back bass; mm, footprint frame, by hand. */
const FIVE: Path = {
  start: { x: -76, y: 0 },
  segments: [
    { kind: 'line', to: { x: 76, y: 0 } },
    { kind: 'line', to: { x: 70, y: 26 } },
    { kind: 'line', to: { x: 10, y: 35 } },
    { kind: 'line', to: { x: -64, y: 30 } },
  ],
  closed: true,
};
const drawn: Project = {
  ...demo,
  bridge: { ...demo.bridge, outline: { kind: 'drawn', path: FIVE, symmetric: false } },
};
const free: Project = {
  ...drawn,
  bridge: {
    ...drawn.bridge,
    locating: { ...demo.bridge.locating, site: 'free', points: { treble: { x: 60, y: 12 }, bass: { x: -58, y: 14 } } },
  },
};
const nodesOf = ({ bridge: { outline } }: Project): readonly (readonly [number, number])[] =>
  outline.kind === 'drawn'
    ? [outline.path.start, ...outline.path.segments.slice(0, 4).map(({ to }) => to)].map(({ x, y }) => [x, y] as const)
    : [];
const moved = (parts: readonly string[], x: number, y: number, start: Project = drawn): Project =>
  expectReversible('Move', ({ change }) => change('Move', (project) => moveParts(project, parts, { x, y })), start);
const refused = (parts: readonly string[], x: number, y: number, start: Project = drawn): string | undefined => {
  const result = moveParts(start, parts, { x, y });
  return result.ok ? undefined : result.issues[0]?.code;
};

describe('moveParts', () => {
  it('moves the bridge about its slot: 1 mm toward the tail is 1 mm less to the slot', () => {
    expect(moved(['footprint'], 0, 1).bridge.slot.fromFront).toBeCloseTo(slot.fromFront - 1, 9);
    expect(refused(['footprint'], 1, 0)).toBe('move.centred');
  });

  it('leaves the slot where the strings break, and says so', () => {
    expect(refused(['slot'], 0, 1)).toBe('move.slot');
    expect(refused(['nut side'], 0, 1)).toBe('move.fixed');
  });

  it('moves the pin row by any pin, and spreads it by an outer one', () => {
    expect(moved(['pin 3'], 0, 0.5).bridge.pins).toEqual({ ...pins, from: pins.from + 0.5 });
    expect(moved(['pin 1'], 0.5, 0).bridge.pins?.spread).toBeCloseTo(pins.spread + 1, 9);
    // The last pin stands on the bass side: outward is toward smaller x.
    expect(moved(['pin 6'], -0.5, 0).bridge.pins?.spread).toBeCloseTo(pins.spread + 1, 9);
    expect(moved(['pin 2', 'pin 1', 'pin 6'], 0.5, 0.25).bridge.pins).toMatchObject({
      from: pins.from + 0.25,
      spread: pins.spread + 1,
    });
    expect(refused(['pin 3'], 1, 0)).toBe('pin.inner');
    expect(refused(['pin 9'], 0, 1)).toBe('pin.none');
    expect(refused(['pin 1'], -200, 0)).toBe('field.range');
  });

  it('moves nodes together, each as far', () => {
    const after = moved(['node 3', 'node 4'], 1, -2);
    expect(nodesOf(after)).toEqual([
      [-76, 0],
      [76, 0],
      [71, 24],
      [11, 33],
      [-64, 30],
    ]);
    expect(refused(['node 6'], 1, 0)).toBe('outline.noNode');
  });

  it('moves nodes and other parts as one, or none of them', () => {
    const after = moved(['node 4', 'pin 2'], 0, 1);
    expect(nodesOf(after)[3]).toEqual([10, 36]);
    expect(after.bridge.pins?.from).toBeCloseTo(pins.from + 1, 9);
    expect(refused(['node 4', 'slot'], 0, 1)).toBe('move.slot');
  });

  it('moves locating pins once they stand free', () => {
    const after = moved(['locating pin, bass'], 0.1, -0.2, free);
    expect(after.bridge.locating.points?.bass.x).toBeCloseTo(-57.9, 9);
    expect(after.bridge.locating.points?.bass.y).toBeCloseTo(13.8, 9);
    expect(after.bridge.locating.points?.treble).toEqual({ x: 60, y: 12 });
    expect(refused(['locating pin, bass'], 1, 0)).toBe('move.locating');
  });
});

describe('lineUp', () => {
  const lined = (parts: readonly string[], way: Parameters<typeof lineUp>[2], start = drawn) =>
    expectReversible('Line up', ({ change }) => change('Line up', (project) => lineUp(project, parts, way)), start);

  it('brings nodes level with the first that was chosen', () => {
    expect(nodesOf(lined(['node 3', 'node 5', 'node 4'], 'level')).slice(2)).toEqual([
      [70, 26],
      [10, 26],
      [-64, 26],
    ]);
  });

  it('brings them straight behind it, or onto the centreline', () => {
    expect(nodesOf(lined(['node 2', 'node 3'], 'straight'))[2]).toEqual([76, 26]);
    expect(nodesOf(lined(['node 4'], 'centreline'))[3]).toEqual([0, 35]);
  });

  it('brings free locating pins level as well', () => {
    const { points } = lined(['locating pin, treble', 'locating pin, bass'], 'level', free).bridge.locating;
    expect(points).toEqual({ treble: { x: 60, y: 12 }, bass: { x: -58, y: 12 } });
  });

  it('needs two', () => {
    expect(lineUp(drawn, ['node 3', 'slot'], 'level')).toMatchObject({ ok: false, issues: [{ code: 'hand.few' }] });
  });
});

describe('spreadEvenly', () => {
  it('spreads between the outermost, in the order in which they lie', () => {
    const after = expectReversible(
      'Spread',
      ({ change }) => change('Spread', (project) => spreadEvenly(project, ['node 5', 'node 3', 'node 4'], 'x')),
      drawn,
    );
    // −64 and 70 stay; (−64 + 70) / 2 = 3.
    expect(nodesOf(after).slice(2)).toEqual([
      [70, 26],
      [3, 35],
      [-64, 30],
    ]);
  });

  it('needs three', () => {
    expect(spreadEvenly(drawn, ['node 3', 'node 4'], 'y')).toMatchObject({ ok: false, issues: [{ code: 'hand.few' }] });
  });
});

describe('partsInWords', () => {
  it('names one part and counts several', () => {
    expect(partsInWords(['node 3'])).toBe('node 3');
    expect(partsInWords(['node 3', 'slot', 'pin 1'])).toBe('3 parts');
  });
});
