import { useState } from 'react';
import { secondsLeft } from '../../../../store/timers/secondsLeft';
import { showCount, showSpan } from './showCount';
import { TIMER_NAMES } from './timerNames';
import { allowTone, soundTone, toneAllowed } from './tone';
import { useTimers, useTimersState } from './useTimers';
import './timers.css';

/** All clocks that run, of every project; nothing while none does. */
export function TimerList() {
  const timers = useTimers();
  const { timers: all, now, movedBack } = useTimersState(timers);
  const [sound, setSound] = useState(toneAllowed);
  const up = all.filter((timer) => secondsLeft(timer, now) <= 0);
  return (
    <>
      <p className="for-readers" aria-live="assertive">
        {up.map(({ what, name }) => `${TIMER_NAMES[what]} is up: ${name}.`).join(' ')}
      </p>
      {movedBack > 0 && (
        <div className="timers-note">
          <p>
            The clock of this device went back by {showSpan(movedBack)}. The counts go on from what they showed before;
            time while this page was closed may be missing. Hold them against a watch.
          </p>
          <button type="button" onClick={timers.takeNote}>
            Noted
          </button>
        </div>
      )}
      {all.length > 0 && (
        <ul className="timers" aria-label="Clocks that run">
          {all.map((timer) => {
            const { id, what, name } = timer;
            const left = secondsLeft(timer, now);
            const called = TIMER_NAMES[what];
            return (
              <li key={id} data-up={left <= 0}>
                <strong>{left <= 0 ? 'Time is up' : showCount(left)}</strong>
                <span>
                  {called}, {name}
                  {left <= 0 && `, ${showSpan(-left)} ago`}
                </span>
                <button type="button" onClick={() => timers.stop(id)}>
                  {left <= 0 ? 'Heard' : 'Stop'}{' '}
                  <span className="for-readers">
                    {called.toLowerCase()} of {name}
                  </span>
                </button>
              </li>
            );
          })}
          {!sound && !toneAllowed() && (
            <li className="timers-sound">
              <button
                type="button"
                onClick={() => {
                  allowTone();
                  soundTone();
                  setSound(true);
                }}
              >
                Turn the sound on
              </button>
            </li>
          )}
        </ul>
      )}
    </>
  );
}
