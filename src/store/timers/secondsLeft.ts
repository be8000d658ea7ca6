import type { Timer } from './types';

/** Seconds until the time is up, − once it is. now: milliseconds since 1970. */
export const secondsLeft = ({ startedAt, seconds }: Timer, now: number): number => seconds - (now - startedAt) / 1000;
