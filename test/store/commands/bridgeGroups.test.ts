import { describe, expect, it } from 'vitest';
import { demoProject } from '../../../src/core/kinds/demo';
import { KINDS } from '../../../src/core/kinds/kinds';
import { chooseCutting } from '../../../src/store/commands/chooseCutting';
import { chooseHold } from '../../../src/store/commands/chooseHold';
import { chooseRamps } from '../../../src/store/commands/chooseRamps';
import { chooseShape } from '../../../src/store/commands/chooseShape';
import { chooseSite } from '../../../src/store/commands/chooseSite';
import { mendDesign } from '../../../src/store/commands/mendDesign';
import { expectReversible } from '../expectReversible';
import { MORNING, startStore } from '../startStore';

const demo = demoProject('test', MORNING);
const classical = (() => {
  const kind = KINDS.find(({ id }) => id === 'classical');
  if (kind === undefined) throw new Error('There is a classical kind.');
  return kind.make('test', MORNING);
})();

describe('chooseHold', () => {
  it('takes pins away for a tie block as wide as the strings, and moves locating pins out of their holes', () => {
    const locating = { ...demo.bridge.locating, site: 'outer-pin-holes' as const };
    const start = { ...demo, bridge: { ...demo.bridge, locating } };
    const after = expectReversible(
      'Held',
      ({ change }) => change('Held', (each) => chooseHold(each, 'tie-block')),
      start,
    );
    expect(after.bridge.pins).toBeNull();
    expect(after.bridge.ties).toMatchObject({ kind: 'tie-block', spread: demo.instrument.spread.own });
    expect(after.bridge.locating.site).toBe('slot-ends');
  });

  it('leaves free locating pins where they are', () => {
    const locating = { ...demo.bridge.locating, site: 'free' as const };
    const start = { ...demo, bridge: { ...demo.bridge, locating } };
    const after = expectReversible(
      'Held',
      ({ change }) => change('Held', (each) => chooseHold(each, 'back-edge')),
      start,
    );
    expect(after.bridge.locating.site).toBe('free');
    expect(after.bridge.ties?.kind).toBe('back-edge');
  });

  it('gives pins as wide apart as the strings in place of string holes', () => {
    expect(classical.bridge.ties?.kind).toBe('tie-block');
    const after = expectReversible(
      'Held',
      ({ change }) => change('Held', (each) => chooseHold(each, 'pins')),
      classical,
    );
    expect(after.bridge.pins?.spread).toBe(classical.instrument.spread.own);
    expect(after.bridge.ties).toBeNull();
  });
});

it('a tie-block shape brings its string holes, as wide apart as the strings; a pinned shape takes them away', () => {
  const tied = expectReversible('Shape', ({ change }) => change('Shape', (each) => chooseShape(each, 'tie-block')));
  expect(tied.bridge.ties).toMatchObject({ kind: 'tie-block', spread: tied.instrument.spread.own });
  const pinned = expectReversible('Shape', ({ change }) => change('Shape', (each) => chooseShape(each, 'belly')), tied);
  expect(pinned.bridge.ties).toBeNull();
});

describe('chooseSite', () => {
  it('gives free points a place in the wings, one on each side', () => {
    const after = expectReversible('Site', ({ change }) => change('Site', (each) => chooseSite(each, 'free')));
    const { points, site } = after.bridge.locating;
    expect(site).toBe('free');
    expect(points?.treble.x).toBeGreaterThan(40);
    expect(points?.bass.x).toBe(-(points?.treble.x ?? 0));
  });

  it('keeps the points of an earlier choice', () => {
    const points = { treble: { x: 50, y: 9 }, bass: { x: -51, y: 10 } };
    const start = { ...demo, bridge: { ...demo.bridge, locating: { ...demo.bridge.locating, points } } };
    const after = expectReversible('Site', ({ change }) => change('Site', (each) => chooseSite(each, 'free')), start);
    expect(after.bridge.locating.points).toBe(points);
  });

  it('edits a free point by its field', () => {
    const { store } = startStore();
    store.actions.change('Site', (each) => chooseSite(each, 'free'));
    expect(store.actions.setField('bridge.locating.points.bass.x', -61)).toEqual([]);
    expect(store.getState().project.bridge.locating.points?.bass.x).toBe(-61);
  });
});

describe('chooseRamps', () => {
  it('marks ramps, and takes them away again', () => {
    const after = expectReversible('Ramps', ({ change }) => change('Ramps', (each) => chooseRamps(each, true)));
    expect(after.bridge.pins?.ramp).toMatchObject({ length: 4, width: 1.6 });
    const none = expectReversible('Ramps', ({ change }) => change('Ramps', (each) => chooseRamps(each, false)), after);
    expect(none.bridge.pins?.ramp).toBeNull();
  });

  it('says that a bridge without pins has none', () => {
    const refused = chooseRamps(classical, true);
    expect(refused.ok ? null : refused.issues[0]?.code).toBe('pins.none');
  });
});

it('chooseCutting begins with a cutter of 1/8 in, or the slot’s width where that is less', () => {
  const after = expectReversible('Fence', ({ change }) => change('Fence', (each) => chooseCutting(each, true)));
  expect(after.bridge.cutting?.cutter).toBeCloseTo(3.175, 9);
  const narrow = expectReversible(
    'Fence',
    ({ change }) => change('Fence', (each) => chooseCutting(each, true)),
    classical,
  );
  expect(narrow.bridge.cutting?.cutter).toBe(classical.bridge.slot.width);
});

describe('mendDesign', () => {
  it('sets every figure in one step', () => {
    const set = [
      { path: 'bridge.pins.stagger', value: 6 },
      { path: 'bridge.slot.fromFront', value: 9 },
    ];
    const after = expectReversible('Two rows', ({ change }) => change('Two rows', (each) => mendDesign(each, { set })));
    expect([after.bridge.pins?.stagger, after.bridge.slot.fromFront]).toEqual([6, 9]);
  });

  it('changes nothing when a field does not take its figure', () => {
    const refused = mendDesign(demo, { set: [{ path: 'bridge.pins.stagger', value: 600 }] });
    expect(refused.ok ? null : refused.issues[0]?.code).toBe('field.range');
    const unknown = mendDesign(classical, { set: [{ path: 'bridge.pins.stagger', value: 6 }] });
    expect(unknown.ok ? null : unknown.issues[0]?.code).toBe('field.unknown');
  });
});
