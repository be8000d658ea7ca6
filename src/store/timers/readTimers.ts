import type { TimerKind } from '../../core/run/types';
import type { KeptTimers, Timer } from './types';

/** More clocks than anyone has running. */
export const MOST_TIMERS = 20;
const LONGEST_ID = 64;
const LONGEST_NAME = 200;
/** Four weeks, s. */
const LONGEST = 2_419_200;
/** The last instant of the calendar's year 9999. */
const LAST_INSTANT = 253_402_300_799_999;

const KINDS: readonly TimerKind[] = ['open', 'closed', 'clamp', 'cure'];

const isText = (value: unknown, longest: number): value is string =>
  typeof value === 'string' && value.length <= longest;
const within = (value: unknown, least: number, most: number): value is number =>
  typeof value === 'number' && value >= least && value <= most;

const isTimer = (kept: unknown): kept is Timer => {
  if (typeof kept !== 'object' || kept === null) return false;
  const { id, project, name, what, startedAt, seconds, heard } = kept as Partial<Record<keyof Timer, unknown>>;
  return (
    [id, project].every((each) => isText(each, LONGEST_ID)) &&
    isText(name, LONGEST_NAME) &&
    KINDS.some((kind) => kind === what) &&
    within(startedAt, 0, LAST_INSTANT) &&
    within(seconds, 0, LONGEST) &&
    typeof heard === 'boolean'
  );
};

const plain = ({ id, project, name, what, startedAt, seconds, heard }: Timer): Timer => ({
  ...{ id, project, name, what, startedAt, seconds, heard },
});

/** What was kept, from its text; whatever is no clock is left out. Null when the text is none of ours. */
export const readTimers = (text: string | null): KeptTimers | null => {
  let kept: unknown;
  try {
    kept = JSON.parse(text ?? '');
  } catch {
    return null;
  }
  if (typeof kept !== 'object' || kept === null) return null;
  const { timers, seen, movedBack } = kept as Partial<Record<keyof KeptTimers, unknown>>;
  return {
    timers: (Array.isArray(timers) ? timers : []).filter(isTimer).map(plain).slice(0, MOST_TIMERS),
    seen: within(seen, 0, LAST_INSTANT) ? seen : 0,
    movedBack: within(movedBack, 0, LAST_INSTANT) ? movedBack : 0,
  };
};
