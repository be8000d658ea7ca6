import { deriveAreas } from '../../src/core/derive/deriveAreas';
import { fieldAt } from '../../src/core/document/fieldAt';
import type { FieldValue } from '../../src/core/document/fieldValue';
import type { Project } from '../../src/core/document/types';
import { demoProject } from '../../src/core/kinds/demo';
import { createStore, type Store, type StoreNeeds } from '../../src/store/createStore';
import type { DeriveAreas } from '../../src/store/keepAreas';

/** The moments at which the clock of a test stands, before and after a change. */
export const MORNING = '2026-03-01T09:00:00.000Z';
export const NOON = '2026-03-01T12:00:00.000Z';

/** A store whose fields are set by their paths. */
export interface TestStore extends Omit<Store, 'actions'> {
  readonly actions: Omit<Store['actions'], 'setField'> & {
    setField(path: string, value: FieldValue): ReturnType<Store['actions']['setField']>;
  };
}

/** A store that keeps its device settings in memory; `kept` is what was kept from an earlier visit. */
export const startStore = (
  kept: string | null = null,
  start: Project = demoProject('test', MORNING),
  areas: DeriveAreas = deriveAreas,
  loadAround: StoreNeeds['loadAround'] = async () => null,
): { store: TestStore; kept: () => string | null } => {
  let text = kept;
  const memory = {
    read: () => text,
    write: (next: string) => {
      text = next;
    },
  };
  const store = createStore({ start, clock: { now: () => NOON }, memory, deriveAreas: areas, loadAround });
  const setField: TestStore['actions']['setField'] = (path, value) =>
    store.actions.setField(fieldAt(store.getState().project, path), value);
  return { store: { ...store, actions: { ...store.actions, setField } }, kept: () => text };
};
