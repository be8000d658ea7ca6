import type { HeightGate } from '../../document/types';
import type { DesignCheck } from '../types';

const SOURCE = 'a copy of the old bridge stood too low after a neck reset: bryankimsey.blogspot.com, December 2015';

/** Whether the neck was read before the old bridge is copied: after a reset an exact copy may be too low. */
export const heightFirst = ({ straightedge }: HeightGate): DesignCheck => ({
  id: 'repair-height',
  verdict: straightedge === null ? 'look' : 'good',
  message:
    straightedge === null
      ? 'Read the straightedge on the frets before the thickness of the old bridge is copied: a neck that was reset wants another.'
      : 'The neck was read, so the thickness of the bridge follows from it and not from the old bridge.',
  lengths: [],
  source: SOURCE,
});
