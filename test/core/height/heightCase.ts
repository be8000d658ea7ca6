import { HEIGHT_LIMITS } from '../../../src/core/height/heightLimits';
import type { HeightChainArguments } from '../../../src/core/height/types';

/** Nut 0.5, action 2.2, relief 0.15 on 645, flat board: 3.783 at the saddle. Bridge 9.5, slot 6.5. */
export const STEEL_CASE: HeightChainArguments = {
  scaleLength: 645,
  nutHeight: { treble: 0.5, bass: 0.5 },
  action: { treble: 2.2, bass: 2.2 },
  relief: 0.15,
  reliefFrets: [1, 14],
  boardRadius: null,
  strings: [27, 0, -27].map((saddleX) => ({ nutX: (saddleX * 2) / 3, saddleX, setback: 0 })),
  airspace: 0.4,
  bridgeThickness: 9.5,
  slotDepth: 6.5,
  saddleBlank: null,
  run: 11.1125,
  pickupThickness: 0,
  limits: HEIGHT_LIMITS.steel,
};
