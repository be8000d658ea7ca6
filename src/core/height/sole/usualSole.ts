import type { Sole } from '../../document/soleTypes';
import type { HeightKindName, Project } from '../../document/types';

const INCH = 25.4;
const FOOT = 12 * INCH;

/** Kept between the end of the slot and the wing, mm: common practice, no source. */
const BESIDE_SLOT = 5;

/** Thickness of the wing tips by kind, mm: from memory. */
const TIPS: Readonly<Record<HeightKindName, number>> = { steel: (5 / 32) * INCH, classical: 3.5, ukulele: 2.5 };

/** The dome of a steel-string's top: 28 ft in one kit. Flat where no source speaks of one. */
const DOMES: Readonly<Record<HeightKindName, number | null>> = { steel: 28 * FOOT, classical: null, ukulele: null };

/**
 * A sole to begin with, flat as it comes from the saw: wings from beside the slot to the tips, from full thickness; of a tie
 * block level from the block on. halfLength: half the bridge, mm.
 */
export const usualSole = ({ bridge, height }: Pick<Project, 'bridge' | 'height'>, halfLength: number): Sole => {
  const { outline, slot, thickness } = bridge;
  const tip = Math.min(TIPS[height.kind], thickness);
  const block = outline.kind !== 'drawn' && outline.shape === 'tie-block' ? outline.parameters.block : undefined;
  const wanted = block === undefined ? slot.length / 2 + BESIDE_SLOT : block / 2;
  const dome = DOMES[height.kind];
  return {
    wing: { tip, inner: block === undefined ? thickness : tip, begin: Math.max(5, Math.min(wanted, halfLength * 0.9)) },
    face: null,
    draft: 0,
    sanding: 0,
    across: null,
    along: null,
    top: {
      from: 'radius',
      across: dome,
      along: dome,
      gaps: { bassTip: 0, bassWing: 0, centre: 0, trebleWing: 0, trebleTip: 0 },
      under: null,
    },
  };
};
