import type { KeepState } from '../../core/ports';
import type { AppState } from '../../store/types';

/**
 * What the maker must do before the page may be left for a new version, in a sentence; null when nothing would be lost.
 *
 * @param keeping what is known of the work in this browser; null where it keeps none
 */
export const whatFirst = (
  { project, saved, history }: Pick<AppState, 'project' | 'saved' | 'history'>,
  keeping: KeepState | null,
): string | null => {
  if (keeping?.kind === 'conflict') return 'First settle which of the two tabs has the project that stays.';
  if (keeping?.kind === 'keeping') return 'Your work is being kept: a moment.';
  if (keeping?.kind === 'kept' || saved === project) return null;
  const untouched = saved === null && history.past.length === 0 && history.future.length === 0;
  return keeping === null && untouched ? null : 'First press Save: your work is not kept yet.';
};
