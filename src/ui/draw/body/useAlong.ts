import type { BodyDatum } from '../../../core/document/bodyTypes';
import { useStore } from '../../useStore';

/** What places along the centreline are read from now, and its y from the nut; the nut while the line is not known. */
export const useAlong = (): { readonly from: BodyDatum; readonly line: number } => {
  const from = useStore((state) => state.project.body?.from ?? 'nut');
  const { board, bridge } = useStore((state) => state.derived);
  if (from === 'octave' && board.ok) return { from, line: board.value.octave };
  if (from === 'front' && bridge.ok) return { from, line: bridge.value.front };
  return { from: 'nut', line: 0 };
};
