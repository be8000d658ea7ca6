import { useSyncExternalStore } from 'react';
import type { Timers, TimersState } from '../../../../store/timers/createTimers';
import { timersOf } from '../../../../store/timers/timersOf';
import { useServices } from '../../../services';

/** The clocks of this device. */
export const useTimers = (): Timers => {
  const { timerMemory, clock } = useServices();
  return timersOf(timerMemory, clock);
};

/** What they show, kept up to date. */
export const useTimersState = (timers: Timers): TimersState => useSyncExternalStore(timers.subscribe, timers.getState);
