import { describe, expect, it } from 'vitest';
import { KINDS } from '../../src/core/kinds/kinds';
import { MORNING, startStore } from './startStore';

describe('history', () => {
  it('goes back and forth over several steps, and a new step ends what was undone', () => {
    const { store } = startStore();
    const { actions, getState } = store;
    const start = getState().project;
    actions.setField('instrument.widths.nut', 44);
    actions.setField('instrument.widths.nut', 45);
    actions.setHand('left');
    expect(getState().history.past.map(({ label }) => label)).toEqual([
      'Nut width 44.0',
      'Nut width 45.0',
      'Hand: left',
    ]);
    actions.undo();
    actions.undo();
    expect(getState().project.instrument.widths.nut).toBe(44);
    expect(getState().message).toMatchObject({ kind: 'status', text: 'Undone: Nut width 45.0' });
    actions.setField('setup.relief', 0.2);
    expect(getState().history.future).toEqual([]);
    actions.undo();
    actions.undo();
    actions.undo();
    expect(getState().project).toBe(start);
    actions.redo();
    expect(getState().project.instrument.widths.nut).toBe(44);
  });

  it('takes another project as one step, so that nothing is lost', () => {
    const { store } = startStore();
    const before = store.getState().project;
    const other = KINDS[1]?.make('other', MORNING);
    if (other === undefined) throw new Error('there is no second kind');
    store.actions.select(['slot']);
    store.actions.replaceProject(other, 'New: classical');
    expect(store.getState().project).toBe(other);
    expect(store.getState().selection).toEqual([]);
    store.actions.undo();
    expect(store.getState().project).toBe(before);
  });

  it('keeps figures and drawing in step with the project', () => {
    const { store } = startStore();
    const drawing = store.getState().drawing;
    store.actions.setField('instrument.scale.entered', 650);
    const { derived } = store.getState();
    expect(derived.board.ok && derived.board.value.octave).toBe(650);
    expect(store.getState().drawing).not.toBe(drawing);
    store.actions.undo();
    expect(store.getState().drawing).toEqual(drawing);
  });
});

describe('a burst of changes', () => {
  const widen = (by: number, burst?: string) => (store: ReturnType<typeof startStore>['store']) =>
    store.actions.change(
      `Nut width ${by} wider`,
      (project) => {
        const { widths } = project.instrument;
        const wider = { ...widths, nut: widths.nut + by };
        return { ok: true, value: { ...project, instrument: { ...project.instrument, widths: wider } } };
      },
      burst,
    );

  it('is one step from before the first to after the last, with the last label', () => {
    const { store } = startStore();
    const start = store.getState().project;
    for (const by of [1, 2, 3]) widen(by, 'nudge 1')(store);
    const { past } = store.getState().history;
    expect(past.map(({ label }) => label)).toEqual(['Nut width 3 wider']);
    expect(store.getState().project.instrument.widths.nut).toBe(start.instrument.widths.nut + 6);
    store.actions.undo();
    expect(store.getState().project).toBe(start);
    store.actions.redo();
    expect(store.getState().project.instrument.widths.nut).toBe(start.instrument.widths.nut + 6);
  });

  it('ends with another burst, with a change that is in none, and with an undo', () => {
    const { store } = startStore();
    widen(1, 'nudge 1')(store);
    widen(1, 'nudge 2')(store);
    widen(1)(store);
    widen(1)(store);
    widen(1, 'nudge 2')(store);
    expect(store.getState().history.past).toHaveLength(5);
    store.actions.undo();
    widen(1, 'nudge 2')(store);
    expect(store.getState().history.past).toHaveLength(5);
  });
});

describe('what is chosen', () => {
  it('is one part, until more are asked for; a second press lets go', () => {
    const { store } = startStore();
    const { press, select, setHandwork } = store.actions;
    const chosen = () => store.getState().selection;
    press('pin 1', false);
    press('pin 2', false);
    expect(chosen()).toEqual(['pin 2']);
    press('pin 3', true);
    expect(chosen()).toEqual(['pin 2', 'pin 3']);
    press('pin 2', true);
    expect(chosen()).toEqual(['pin 3']);
    setHandwork({ several: true });
    press('slot', false);
    expect(chosen()).toEqual(['pin 3', 'slot']);
    setHandwork({ several: false });
    press('slot', false);
    expect(chosen()).toEqual(['slot']);
    press('slot', false);
    expect(chosen()).toEqual([]);
    select(['slot', 'pin 1']);
    press('pin 1', false);
    expect(chosen()).toEqual(['pin 1']);
    select(['slot', 'pin 1']);
    press('pin 4', false);
    expect(chosen()).toEqual(['pin 4']);
    expect(store.getState().history.past).toEqual([]);
  });
});

describe('device settings', () => {
  it('are kept, are no step, and leave the project alone', () => {
    const { store, kept } = startStore();
    const { project } = store.getState();
    store.actions.setDevice({ units: 'in', paper: 'letter', dotsPerMm: 7.5, print: { margin: 8 } });
    expect(store.getState().project).toBe(project);
    expect(store.getState().history.past).toEqual([]);
    expect(startStore(kept()).store.getState().device).toEqual(store.getState().device);
  });

  it.each([
    ['nothing', null],
    ['no JSON', '{'],
    ['null', 'null'],
    [
      'values that are not allowed',
      '{"units":"furlong","millimetreDecimals":9,"station":"bench","paper":4,"print":"a0"}',
    ],
    ['a glass that cannot be', '{"dotsPerMm":"7"}'],
    ['a glass of no dots', '{"dotsPerMm":0.5}'],
    ['keys of another kind', '{"__proto__":{"units":"in"},"toString":1}'],
  ])('take their defaults from %s', (_, text) => {
    expect(startStore(text).store.getState().device).toEqual(startStore().store.getState().device);
    expect(startStore(text).store.getState().device.units).toBe('mm');
  });

  it('write the same message anew each time it is told', () => {
    const { store } = startStore();
    store.actions.warn('No.');
    const { count } = store.getState().message;
    store.actions.warn('No.');
    expect(store.getState().message).toEqual({ kind: 'alert', text: 'No.', count: count + 1 });
  });
});
