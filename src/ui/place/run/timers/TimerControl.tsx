import { showMinutes } from '../../../../core/glue/showMinutes';
import type { TimerKind } from '../../../../core/run/types';
import { secondsLeft } from '../../../../store/timers/secondsLeft';
import { useServices } from '../../../services';
import { useStore } from '../../../useStore';
import { showCount, showSpan } from './showCount';
import { TIMER_NAMES } from './timerNames';
import { allowTone } from './tone';
import { useTimers, useTimersState } from './useTimers';
import './timers.css';

/** One clock of this project: start, count, stop. Says where the time comes from while there is none. */
export function TimerControl({ what }: { readonly what: TimerKind }) {
  const { newId } = useServices();
  const timers = useTimers();
  const { timers: all, now } = useTimersState(timers);
  const project = useStore((state) => state.project.id);
  const { name } = useStore((state) => state.project.about);
  const serial = useStore((state) => state.project.build?.serial ?? '');
  const minutes = useStore((state) => state.project.build?.glue?.times[what] ?? null);
  const called = TIMER_NAMES[what];
  const running = all.find((timer) => timer.project === project && timer.what === what);

  if (running === undefined)
    return minutes === null || minutes === 0 ? null : (
      <div className="timer">
        <button
          type="button"
          className="timer-act"
          onClick={() => {
            allowTone();
            timers.start({
              id: newId(),
              project,
              name: serial === '' ? name : `${name}, ${serial}`,
              what,
              seconds: minutes * 60,
            });
          }}
        >
          Start {called.toLowerCase()}, {showMinutes(minutes)}
        </button>
      </div>
    );
  const left = secondsLeft(running, now);
  const up = left <= 0;
  return (
    <div className="timer" data-up={up}>
      <p className="timer-count">
        {up ? (
          <strong>Time is up</strong>
        ) : (
          <strong role="timer" aria-label={`${called}, left`}>
            {showCount(left)}
          </strong>
        )}
        <span>{up ? `${called}, ${showSpan(-left)} ago` : `${called}, left`}</span>
      </p>
      <button type="button" className="timer-act" onClick={() => timers.stop(running.id)}>
        {up ? 'Heard' : 'Stop'} <span className="for-readers">{called.toLowerCase()}</span>
      </button>
    </div>
  );
}
