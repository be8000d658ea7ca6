import type {
  FormerFootprint,
  FormerHoles,
  FormerRow,
  FormerSlot,
  Repair,
} from '../../../src/core/document/repairTypes';

/** An old rectangle 6 × 1 in, its front edge 620 from the nut. */
export const FORMER: FormerFootprint = {
  outline: { shape: 'rectangular', parameters: { length: 152.4, full: 25.4, corner: 0 } },
  front: 620,
  aside: 0,
  turn: 0,
};

const ROW: FormerRow = {
  kind: 'row',
  count: 6,
  spread: 50,
  distance: 18,
  aside: 0,
  slant: 0,
  stagger: 0,
  diameter: 5,
};

/** Six old holes over 50, 18 behind the front edge. */
export const rowWith = (changes: Partial<FormerRow> & Pick<Partial<FormerHoles>, 'from'> = {}): FormerHoles => ({
  from: 'front',
  ...ROW,
  ...changes,
});

/** A square-ended slot 70 × 3, its front wall 6 behind the front edge. */
export const slotWith = (changes: Partial<FormerSlot> = {}): FormerSlot => ({
  from: 'front',
  distance: 6,
  aside: 0,
  slant: 0,
  length: 70,
  width: 3,
  depth: 6,
  ends: 'square',
  ...changes,
});

export const repairWith = (changes: Partial<Repair> = {}): Repair => ({
  footprint: FORMER,
  holes: null,
  slot: null,
  ...changes,
});
