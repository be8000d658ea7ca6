import type { KeptVersion } from './database';

/** States that are kept by themselves, for each project. */
const MOST_STATES = 50;

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** How far apart states of an age stand: close in the last minutes, then a minute, ten minutes, an hour, a day. */
const SPANS: readonly { readonly until: number; readonly span: number }[] = [
  { until: MINUTE, span: 10_000 },
  { until: 15 * MINUTE, span: MINUTE },
  { until: 2 * HOUR, span: 10 * MINUTE },
  { until: DAY, span: 2 * HOUR },
];

/**
 * Those of a project's states that are let go, so that fifty reach from a moment ago back over days: of each span of time the
 * last one stays. Spans lie fixed on the clock, so that hours of work without a pause leave their traces. Named ones are never
 * among them. Where the clock was set back, older states count as new.
 */
export const thinVersions = (versions: readonly KeptVersion[]): readonly KeptVersion[] => {
  const states = versions.filter(({ name }) => name === null).sort((one, other) => other.order - one.order);
  const now = Date.parse(states[0]?.at ?? '');
  const taken = new Set<string>();
  const staying = states.filter(({ at }) => {
    const time = Date.parse(at);
    const age = Math.max(0, now - time);
    const span = SPANS.find(({ until }) => age < until)?.span ?? DAY;
    const place = `${span} ${Math.floor(time / span)}`;
    if (taken.has(place)) return false;
    taken.add(place);
    return true;
  });
  const kept = new Set(staying.slice(0, MOST_STATES));
  return states.filter((state) => !kept.has(state));
};
