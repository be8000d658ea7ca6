import type { DesignCheck } from '../types';
import type { Bodied } from './bodied';
import { foundChecks } from './foundChecks';
import { handCheck } from './handCheck';
import { holesAndBraces } from './holesAndBraces';
import { plateChecks } from './plateChecks';
import { roomChecks } from './roomChecks';
import { wireInSlot } from './wireInSlot';

/** Every check of what lies beneath and around the bridge, in the order a maker would look. */
export const bodyChecks = (bodied: Bodied): readonly DesignCheck[] => [
  handCheck(bodied),
  ...foundChecks(bodied),
  ...holesAndBraces(bodied),
  ...plateChecks(bodied),
  ...wireInSlot(bodied),
  ...roomChecks(bodied),
];
