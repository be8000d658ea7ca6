import { describe, expect, it } from 'vitest';
import type { KeepState } from '../../src/core/ports';
import { whatFirst } from '../../src/main/offline/whatFirst';
import type { AppState } from '../../src/store/types';

// What must hold stands in the design: never under unsaved work.

const project = { id: 'p' } as AppState['project'];
const step = { label: 'Set a figure', before: project, after: project };
const untouched: Parameters<typeof whatFirst>[0] = { project, saved: null, history: { past: [], future: [] } };
const changed = { ...untouched, history: { ...untouched.history, past: [step] } } as typeof untouched;
const saved = { ...changed, saved: project };

const KEPT: KeepState = { kind: 'kept', at: '2026-03-01T09:30:00.000Z' };
const KEEPING: KeepState = { kind: 'keeping' };
const NOT_KEPT: KeepState = { kind: 'not-kept', code: 'library.closed', reason: 'No room.' };

describe('what must be done before a new version is taken', () => {
  it.each([
    ['nothing was done yet, and nothing is kept here', untouched, null, null],
    ['changed, and nothing is kept here', changed, null, 'First press Save: your work is not kept yet.'],
    [
      'undone again: the steps could still be redone',
      { ...untouched, history: { past: [], future: [step] } },
      null,
      'First press Save: your work is not kept yet.',
    ],
    ['saved to a file', saved, null, null],
    ['changed and kept', changed, KEPT, null],
    ['changed and being kept', changed, KEEPING, 'Your work is being kept: a moment.'],
    ['changed, and keeping failed', changed, NOT_KEPT, 'First press Save: your work is not kept yet.'],
    ['saved to a file, where keeping failed', saved, NOT_KEPT, null],
  ] as const)('%s', (_, state, keeping, expected) => {
    expect(whatFirst(state as typeof untouched, keeping)).toBe(expected);
  });

  it('two tabs that disagree are settled first, even when saved', () => {
    const other = { id: 'p' } as Extract<KeepState, { kind: 'conflict' }>['other'];
    expect(whatFirst(saved, { kind: 'conflict', other })).toMatch(/^First settle which of the two tabs/);
  });
});
