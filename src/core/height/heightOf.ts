import type { SaddlePlace } from '../bridge/types';
import type { Project } from '../document/types';
import type { Board, Scale, StringPlace } from '../instrument/types';
import type { Result } from '../result';
import { heightChain } from './heightChain';
import { heightLimitsInUse } from './limitsInUse';
import type { HeightChain } from './types';

/** The chain of heights of this instrument; null until the straightedge was read. */
export const heightOf = (
  project: Pick<Project, 'instrument' | 'setup' | 'bridge' | 'height' | 'limits'>,
  scale: Scale,
  board: Board,
  strings: readonly StringPlace[],
  saddle: SaddlePlace,
): Result<HeightChain> | null => {
  const { instrument, setup, bridge, height, limits } = project;
  if (height.straightedge === null) return null;
  return heightChain({
    scaleLength: scale.scaleLength,
    nutHeight: setup.nutHeight,
    action: setup.action,
    relief: setup.relief,
    reliefFrets: [setup.reliefFrets.from, setup.reliefFrets.to],
    boardRadius: instrument.boardRadius,
    strings: strings.map(({ nutX, saddleX }) => ({
      nutX,
      saddleX,
      setback: saddle.centre - board.octave + saddle.slope * saddleX,
    })),
    airspace: height.straightedge,
    bridgeThickness: bridge.thickness,
    slotDepth: bridge.slot.depth,
    saddleBlank: null,
    run: height.run,
    pickupThickness: height.pickup,
    limits: heightLimitsInUse(height.kind, limits),
  });
};
