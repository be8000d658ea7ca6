import { clampingCauls } from './parts/clampingCauls';
import { drillCard } from './parts/drillCard';
import { finishMask } from './parts/finishMask';
import { gaugeEnds } from './parts/gaugeEnds';
import { heightCard } from './parts/heightCard';
import { insideCaul } from './parts/insideCaul';
import { longGauge } from './parts/longGauge';
import { octaveStick } from './parts/octaveStick';
import { saddleBlankSheet } from './parts/saddleBlankSheet';
import { slotCard } from './parts/slotCard';
import { soleProfile } from './parts/soleProfile';
import { spacingRule } from './parts/spacingRule';
import type { SheetKind } from './parts/types';
import { windowSheet } from './parts/windowSheet';
import { worksheet } from './parts/worksheet';

/** The sheet that comes before all others and has pages of its own. */
export const TAPE_DOWN = {
  id: 'tape-down',
  name: 'Tape-down template',
  about: 'The bridge at true size, to set by rule and small square and to tape to the top.',
} as const;

/** Every other sheet, in the order of the work. */
export const SHEET_KINDS: readonly SheetKind[] = [
  worksheet,
  heightCard,
  soleProfile,
  octaveStick,
  gaugeEnds,
  longGauge,
  windowSheet,
  drillCard,
  finishMask,
  insideCaul,
  clampingCauls,
  slotCard,
  saddleBlankSheet,
  spacingRule,
];
