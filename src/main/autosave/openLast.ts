import type { Project } from '../../core/document/types';
import type { Library } from '../../core/ports';
import type { HandKeeper } from '../../persistence/library/handKeeper';
import type { DeviceMemory } from '../../store/types';
import { readPending } from './pendingText';

/** What an earlier visit left. */
export interface LastVisit {
  /** The project in hand as the library has it; null for none. */
  readonly found: Project | null;
  /** What was changed after that and could not be kept any more; null for nothing. */
  readonly left: Project | null;
  /** What was in hand and cannot be opened; null when all is well. */
  readonly unread: { readonly id: string; readonly reason: string } | null;
}

/**
 * Looks for what was last in hand. The library itself knows what that was; a browser writes its small notes (`last`) to the
 * disk much later, and they count only where the library cannot be asked.
 */
export const openLast = async (
  library: Library & HandKeeper,
  last: DeviceMemory,
  pending: DeviceMemory,
): Promise<LastVisit> => {
  const left = await readPending(library, pending.read());
  const hand = await library.inHand();
  const id = (hand.ok ? hand.value : null) ?? last.read();
  if (id === null) return { found: null, left, unread: null };
  const read = await library.read(id);
  if (read.ok) return { found: read.value, left, unread: null };
  const [issue] = read.issues;
  // What was deleted is not missed.
  const unread = issue?.code === 'library.missing' ? null : { id, reason: issue?.message ?? '' };
  return { found: null, left, unread };
};
