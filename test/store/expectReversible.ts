import { expect } from 'vitest';
import type { Project } from '../../src/core/document/types';
import { decodeProject } from '../../src/persistence/decodeProject';
import { encodeProject } from '../../src/persistence/encodeProject';
import { startStore, type TestStore } from './startStore';

/**
 * Runs one change on a store and expects one step with this label, the old project back by undo and the new one by redo,
 * and the same project again from its file. Answers with the changed project.
 */
export const expectReversible = (
  label: string,
  change: (actions: TestStore['actions']) => void,
  start?: Project,
): Project => {
  const { store } = startStore(null, start);
  const before = store.getState().project;
  change(store.actions);
  const after = store.getState().project;
  expect(store.getState().history.past.map((step) => step.label)).toEqual([label]);
  expect(after).not.toEqual(before);
  expect(after.revision).toBe(before.revision + 1);
  store.actions.undo();
  expect(store.getState().project).toBe(before);
  store.actions.redo();
  expect(store.getState().project).toBe(after);
  expect(decodeProject(encodeProject(after))).toEqual({ ok: true, value: after });
  return after;
};
