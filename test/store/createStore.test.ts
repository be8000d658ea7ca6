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
    store.actions.select('slot');
    store.actions.replaceProject(other, 'New: classical');
    expect(store.getState().project).toBe(other);
    expect(store.getState().selection).toBeNull();
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

describe('device settings', () => {
  it('are kept, are no step, and leave the project alone', () => {
    const { store, kept } = startStore();
    const { project } = store.getState();
    store.actions.setDevice({ units: 'in', paper: 'letter' });
    expect(store.getState().project).toBe(project);
    expect(store.getState().history.past).toEqual([]);
    expect(startStore(kept()).store.getState().device).toEqual(store.getState().device);
  });

  it.each([
    ['nothing', null],
    ['no JSON', '{'],
    ['null', 'null'],
    ['values that are not allowed', '{"units":"furlong","millimetreDecimals":9,"station":"record","paper":"a0"}'],
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
