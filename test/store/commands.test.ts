import { describe, expect, it } from 'vitest';
import { demoProject } from '../../src/core/kinds/demo';
import { KINDS } from '../../src/core/kinds/kinds';
import { chooseShape } from '../../src/store/commands/chooseShape';
import { expectReversible } from './expectReversible';
import { MORNING, NOON, startStore } from './startStore';

const demo = demoProject('test', MORNING);
const classical = KINDS.find(({ id }) => id === 'classical')?.make('test', MORNING) ?? demo;

describe('setField', () => {
  it('changes one figure, names the step with it and stamps the change', () => {
    const after = expectReversible('Nut width 44.5', ({ setField }) => setField('instrument.widths.nut', 44.5));
    expect(after.instrument.widths).toEqual({ ...demo.instrument.widths, nut: 44.5 });
    expect(after.about.changed).toBe(NOON);
  });

  it('lets a typed scale length set the readings aside, and keeps them', () => {
    const after = expectReversible('Scale length 645.0', ({ setField }) => setField('instrument.scale.entered', 645));
    expect(after.instrument.scale).toEqual({ ...demo.instrument.scale, from: 'entered', entered: 645 });
  });

  it("keeps a string's own compensation", () => {
    const after = expectReversible('Compensation, string 2 (B3) 2.5', ({ setField }) =>
      setField('compensation.own.s2', 2.5),
    );
    expect(after.compensation.own).toEqual({ s2: 2.5 });
  });

  it('reads, sets and clears what may stand empty', () => {
    const read = expectReversible('Straightedge to bridge top 1.2', ({ setField }) =>
      setField('height.straightedge', 1.2),
    );
    expect(read.height.straightedge).toBe(1.2);
    expectReversible(
      'Straightedge to bridge top cleared',
      ({ setField }) => setField('height.straightedge', null),
      read,
    );
    const doubted = expectReversible('Doubt of core 0.02', ({ setField }) => setField('doubts.coreDiameter', 0.02));
    expect(doubted.doubts).toEqual({ coreDiameter: 0.02 });
    const usual = expectReversible(
      'Doubt of core cleared',
      ({ setField }) => setField('doubts.coreDiameter', null),
      doubted,
    );
    expect(usual.doubts).toEqual({});
  });

  it("keeps a string's figures, and readings to any fret", () => {
    const after = expectReversible('Core, string 6 0.46', ({ setField }) =>
      setField('strings.5.elastic.coreDiameter', 0.46),
    );
    expect(after.strings[5]?.elastic).toMatchObject({ kind: 'core', coreDiameter: 0.46 });
    const read = expectReversible('Nut to 5th fret, 1st reading 158.6', ({ setField }) =>
      setField('instrument.scale.readings.5.0', 158.6),
    );
    expect(read.instrument.scale.readings).toHaveLength(4);
  });

  it('has room for 30 readings in all, and says so', () => {
    const { store } = startStore();
    const paths = [1, 2, 3, 4, 5, 6].flatMap((fret) =>
      [0, 1, 2, 3, 4].map((n) => `instrument.scale.readings.${fret}.${n}`),
    );
    const answers = paths.map((path) => store.actions.setField(path, 100));
    expect(store.getState().project.instrument.scale.readings).toHaveLength(30);
    expect(answers.flat().map(({ code }) => code)).toEqual(['field.full', 'field.full', 'field.full']);
  });

  it('names a choice by its word', () => {
    expectReversible('Slot ends: square', ({ setField }) => setField('bridge.slot.ends', 'square'));
  });

  it('refuses what the field does not allow, says what it does, and changes nothing', () => {
    const { store } = startStore();
    const before = store.getState().project;
    const issues = store.actions.setField('instrument.widths.nut', 300);
    expect(issues.map(({ message }) => message)).toEqual(['Nut width goes from 20.0 mm to 90.0 mm.']);
    store.actions.setDevice({ units: 'in' });
    // 20 / 25.4 = 0.787 = 50.4/64, reduced 25/32; 90 / 25.4 = 3.543 = 3 34.8/64: hand arithmetic.
    expect(store.actions.setField('instrument.widths.nut', 300)[0]?.message).toBe(
      'Nut width goes from 25/32″ to 3 35/64″.',
    );
    expect(store.getState().project).toBe(before);
    expect(store.getState().history.past).toEqual([]);
  });

  it('refuses a field that the project does not have, such as pins on a tie-block', () => {
    const { store } = startStore(null, classical);
    expect(store.actions.setField('bridge.pins.spread', 55)[0]?.code).toBe('field.unknown');
    expect(store.actions.setField('about.__proto__', 'x')[0]?.code).toBe('field.unknown');
  });

  it('leaves no step when the value is the same', () => {
    const { store } = startStore();
    expect(store.actions.setField('instrument.widths.nut', demo.instrument.widths.nut)).toEqual([]);
    expect(store.getState().history.past).toEqual([]);
    expect(store.getState().project.revision).toBe(0);
  });
});

describe('the other commands', () => {
  it('setHand changes the hand alone', () => {
    const after = expectReversible('Hand: left', ({ setHand }) => setHand('left'));
    expect(after.instrument).toEqual({ ...demo.instrument, hand: 'left' });
  });

  it('chooseStringSet brings the strings and keeps own compensation of strings that stay', () => {
    const start = { ...demo, compensation: { ...demo.compensation, own: { s1: 1, s6: 4 } } };
    const after = expectReversible(
      'String set: Tenor ukulele, nylon, GCEA',
      ({ chooseStringSet }) => chooseStringSet('ukulele-tenor-nylon'),
      start,
    );
    expect(after.strings.map(({ name }) => name)).toEqual(['A4', 'E4', 'C4', 'G4']);
    expect(after.compensation.own).toEqual({ s1: 1 });
  });

  // Found by the random runs: the pyramid kept the dimensions of the belly, and its file could not be read again.
  it('a shape typed as a field brings its dimensions', () => {
    const after = expectReversible('Bridge shape: pyramid-tip', ({ setField }) =>
      setField('bridge.outline.shape', 'pyramid-tip'),
    );
    expect(after.bridge.outline).toMatchObject({ shape: 'pyramid-tip', parameters: { pyramid: expect.any(Number) } });
  });

  it('chooseShape brings the usual dimensions and keeps what follows the saddle', () => {
    const slot = { ...demo.bridge.slot, width: 2.4, ends: 'square' as const, crown: 0.3 };
    const start = { ...demo, bridge: { ...demo.bridge, slot, rim: 0.8, density: 640 } };
    const after = expectReversible(
      'Bridge shape: tie-block',
      ({ change }) => change('Bridge shape: tie-block', (project) => chooseShape(project, 'tie-block')),
      start,
    );
    expect(after.bridge.outline).toMatchObject({ shape: 'tie-block', parameters: { block: expect.any(Number) } });
    expect(after.bridge.slot).toMatchObject({ width: 2.4, ends: 'square', run: 'stopped', crown: 0.3 });
    expect(after.bridge.slot.length).not.toBe(slot.length);
    expect(after.bridge).toMatchObject({ rim: 0.8, density: 640 });
  });

  it('chooseShape keeps the pin and its reamer from pins to pins', () => {
    const usual = demo.bridge.pins;
    if (usual === null) throw new Error('The demo has pins.');
    const start = { ...demo, bridge: { ...demo.bridge, pins: { ...usual, taper: 5, underHead: 5.35, hole: 4 } } };
    const after = expectReversible(
      'Bridge shape: rectangular',
      ({ change }) => change('Bridge shape: rectangular', (project) => chooseShape(project, 'rectangular')),
      start,
    );
    expect(after.bridge.pins).toMatchObject({ taper: 5, underHead: 5.35, hole: expect.closeTo(4.7625, 9) });
    const first = expectReversible(
      'Bridge shape: rectangular',
      ({ change }) => change('Bridge shape: rectangular', (project) => chooseShape(project, 'rectangular')),
      classical,
    );
    expect(first.bridge.pins).toMatchObject({ taper: 3, underHead: 5.4 });
  });

  it('an unknown string set changes nothing', () => {
    const { store } = startStore();
    store.actions.chooseStringSet('no such set');
    expect(store.getState().history.past).toEqual([]);
  });
});
