import { useEffect } from 'react';
import { createPortal } from 'react-dom';
import { secondsLeft } from '../../../../store/timers/secondsLeft';
import { TimerList } from './TimerList';
import { soundTone } from './tone';
import { useTimers, useTimersState } from './useTimers';

/** How often the clock is looked at, ms; how often it sounds once the time is up, and for how long, s. */
const LOOK = 1000;
const EVERY = 6;
const FOR = 60;

/** Keeps the clocks going whatever the station, sounds them, and shows them in the header of the screen. */
export function RunningTimers() {
  const timers = useTimers();
  const { timers: all, movedBack } = useTimersState(timers);
  const any = all.length > 0;
  useEffect(() => {
    if (!any) return;
    const look = (): void => {
      timers.tick();
      const { timers: shown, now } = timers.getState();
      const over = shown.map((timer) => Math.floor(-secondsLeft(timer, now)));
      if (over.some((seconds) => seconds >= 0 && seconds < FOR && seconds % EVERY === 0)) soundTone();
    };
    look();
    const beat = setInterval(look, LOOK);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(beat);
      document.removeEventListener('visibilitychange', look);
    };
  }, [any, timers]);
  const header = document.querySelector('.header');
  return header === null || (!any && movedBack === 0) ? null : createPortal(<TimerList />, header);
}
