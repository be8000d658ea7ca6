import { deriveAreas } from '../../src/core/derive/deriveAreas';
import type { Project } from '../../src/core/document/types';
import { demoProject } from '../../src/core/kinds/demo';
import { createStore, type Store } from '../../src/store/createStore';
import type { DeriveAreas } from '../../src/store/keepAreas';

/** The moments at which the clock of a test stands, before and after a change. */
export const MORNING = '2026-03-01T09:00:00.000Z';
export const NOON = '2026-03-01T12:00:00.000Z';

/** A store that keeps its device settings in memory; `kept` is what was kept from an earlier visit. */
export const startStore = (
  kept: string | null = null,
  start: Project = demoProject('test', MORNING),
  areas: DeriveAreas = deriveAreas,
): { store: Store; kept: () => string | null } => {
  let text = kept;
  const memory = {
    read: () => text,
    write: (next: string) => {
      text = next;
    },
  };
  return { store: createStore({ start, clock: { now: () => NOON }, memory, deriveAreas: areas }), kept: () => text };
};
