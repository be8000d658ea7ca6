import type { TimerKind } from '../../core/run/types';

/** One clock that counts down by wall clock, so that it goes on while the page is closed. */
export interface Timer {
  readonly id: string;
  /** Id of the project, and its name when the clock was started. */
  readonly project: string;
  readonly name: string;
  readonly what: TimerKind;
  /** Milliseconds since 1970, as everything here that is an instant. */
  readonly startedAt: number;
  readonly seconds: number;
  /** It was told that the time is up. */
  readonly heard: boolean;
}

/** What of the clocks this device keeps. */
export interface KeptTimers {
  readonly timers: readonly Timer[];
  /** The latest that the clock of this device was seen to show. */
  readonly seen: number;
  /** Seconds by which it was seen to go back since the maker last took note; 0 for not. */
  readonly movedBack: number;
}
