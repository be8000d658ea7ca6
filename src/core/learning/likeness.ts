import type { HeightKindName, InstrumentString } from '../document/types';

/** How near an instrument must be to count: chosen by the maker. */
export interface Likeness {
  /** Scales differ by this at most, mm. */
  readonly scaleWithin: number;
  /** The same gauges and pitches · the same pitches · as many strings. */
  readonly strings: 'gauges' | 'pitches' | 'count';
  /** Made from any model, or from the same. */
  readonly model: 'any' | 'same';
}

/** What is like kind until the maker says otherwise. */
export const USUAL_LIKENESS: Likeness = { scaleWithin: 10, strings: 'gauges', model: 'any' };

/** What likeness goes by, of an instrument that was read. */
export interface Particulars {
  readonly id: string;
  /** Id of what it was copied from; null for a design of its own. */
  readonly parent: string | null;
  readonly kind: HeightKindName;
  readonly scaleLength: number;
  readonly strings: readonly InstrumentString[];
}

/** What the next one is to be. */
export interface NextOne {
  readonly kind: HeightKindName;
  readonly scaleLength: number;
  readonly strings: readonly InstrumentString[];
  /** Id of the model; for a model its own. */
  readonly model: string;
}

/** Why an instrument does not count. */
export type Unlike = 'kind' | 'count' | 'pitches' | 'gauges' | 'scale' | 'model';

/** Strings of one gauge come within this of each other, mm: half a thousandth of an inch. */
const SAME_GAUGE = 0.0127;
/** Pitches within half a semitone are the same. */
const SAME_PITCH = 2 ** (0.5 / 12);

const samePitch = (one: InstrumentString, other: InstrumentString): boolean =>
  Math.max(one.frequency, other.frequency) <= SAME_PITCH * Math.min(one.frequency, other.frequency);

const sameGauge = (one: InstrumentString, other: InstrumentString): boolean =>
  one.wound === other.wound && Math.abs(one.diameter - other.diameter) <= SAME_GAUGE;

/** The first reason why an instrument says nothing of the next one; null when it counts. */
export const unlike = (
  next: NextOne,
  { kind, strings, scaleLength, parent, id }: Particulars,
  likeness: Likeness,
): Unlike | null => {
  const each = (same: (one: InstrumentString, other: InstrumentString) => boolean): boolean =>
    strings.every((string, index) => same(string, next.strings[index] ?? string));
  if (kind !== next.kind) return 'kind';
  if (strings.length !== next.strings.length) return 'count';
  if (likeness.strings !== 'count' && !each(samePitch)) return 'pitches';
  if (likeness.strings === 'gauges' && !each(sameGauge)) return 'gauges';
  if (Math.abs(scaleLength - next.scaleLength) > likeness.scaleWithin + 1e-9) return 'scale';
  return likeness.model === 'same' && (parent ?? id) !== next.model ? 'model' : null;
};
