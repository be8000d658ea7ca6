import type { TimerKind } from '../../../../core/run/types';

/** What each clock is called. */
export const TIMER_NAMES: Readonly<Record<TimerKind, string>> = {
  open: 'Open time',
  closed: 'Closed time',
  clamp: 'Clamp time',
  cure: 'Cure time',
};
