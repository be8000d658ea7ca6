import type { SaddlePlace, SlotPlace } from '../../bridge/types';
import type { Project } from '../../document/types';
import { distance } from '../../geom/points';
import type { Result } from '../../result';
import { type SaddleBlank, saddleBlank } from './saddleBlank';
import type { SideHeights } from './sideHeights';
import { soleLimitsInUse } from './soleLimits';

/** The saddle that this bridge needs. Codes: those of saddleBlank. */
export const blankOf = (
  { bridge, height, limits }: Pick<Project, 'bridge' | 'height' | 'limits'>,
  { chain }: SideHeights,
  saddle: SaddlePlace,
  { ends }: SlotPlace,
): Result<SaddleBlank> => {
  const { saddlePlay, saddleClearance } = soleLimitsInUse(limits);
  return saddleBlank({
    strings: saddle.strings.map(({ id, name, x }, index) => ({
      id,
      name,
      x,
      proud: chain.strings[index]?.proud ?? Number.NaN,
    })),
    slot: {
      length: distance(ends.treble, ends.bass),
      width: bridge.slot.width,
      depth: bridge.slot.depth,
      slope: saddle.slope,
    },
    pickup: height.pickup,
    face: bridge.sole?.face ?? null,
    play: saddlePlay.value,
    clearance: saddleClearance.value,
  });
};
