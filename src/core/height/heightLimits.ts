/** From here to there, with where the figures come from. */
export interface LimitRange {
  readonly least: number;
  readonly most: number;
  readonly source: string;
}

/** At least this much, with where the figure comes from. */
export interface LeastLimit {
  readonly least: number;
  readonly source: string;
}

/** What counts as a sound chain of heights, mm, shares and degrees; every figure is the maker's to change. */
export interface HeightLimits {
  /** Straightedge over the top of the bridge. */
  readonly airspace: LimitRange;
  /** Saddle above the bridge, every string. */
  readonly proud: LimitRange;
  /** Bridge at the slot. */
  readonly thickness: LimitRange;
  /** Wood under the slot. */
  readonly woodUnder: LeastLimit;
  /** Share of the saddle that must stand in the slot, so that it does not lean. */
  readonly share: LeastLimit;
  /** Share that is aimed at. */
  readonly shareAim: LeastLimit;
  readonly breakDeg: LeastLimit;
}

export type HeightKind = 'steel' | 'classical' | 'ukulele';

const COMMON = 'common practice, no source';
const TWO_THIRDS = {
  least: 2 / 3,
  source: 'two thirds of the saddle in the slot: buildyourguitar.com, bridge angle tip',
};
const HALF = { least: 0.5, source: COMMON };
/** 1/16 in over 7/16 in is 8.1 degrees. */
const BREAK = {
  least: 8,
  source: 'no sound minimum is known; near 1/16 in over 7/16 in, ramps behind the saddle add to it',
};

/** Limits to start from, by kind of instrument. */
export const HEIGHT_LIMITS: Readonly<Record<HeightKind, HeightLimits>> = {
  steel: {
    // 1/64 in is a hair under 0.4 mm, 1/16 in a hair under 1.6 mm: the wider of both, so that neither unit is refused.
    airspace: { least: 0.396875, most: 1.6, source: '1/64 to 1/16 in: buildyourguitar.com, bridge angle tip' },
    proud: {
      least: 2.4,
      most: 5.6,
      source: 'about 1/8 in: buildyourguitar.com, bridge angle tip; the range is common practice, no source',
    },
    thickness: {
      least: 8,
      most: 11,
      source: 'about 3/8 in: buildyourguitar.com, bridge angle tip; the range is common practice, no source',
    },
    woodUnder: { least: 2.4, source: COMMON },
    share: HALF,
    shareAim: TWO_THIRDS,
    breakDeg: BREAK,
  },
  classical: {
    // The neck lies level with the top or leans forward, so that the straightedge meets the bridge below its top.
    airspace: { least: -4, most: 0.5, source: COMMON },
    proud: { least: 1.5, most: 6, source: COMMON },
    thickness: { least: 7, most: 10.5, source: COMMON },
    woodUnder: { least: 2, source: COMMON },
    share: HALF,
    shareAim: HALF,
    breakDeg: BREAK,
  },
  ukulele: {
    airspace: { least: -2, most: 1.6, source: COMMON },
    proud: { least: 1.5, most: 5, source: COMMON },
    thickness: {
      least: 5,
      most: 8,
      source: 'a blank of 1/4 in: toni-myconcertuke.blogspot.com, April 2010; the range is common practice, no source',
    },
    woodUnder: { least: 1.5, source: COMMON },
    share: HALF,
    shareAim: HALF,
    breakDeg: BREAK,
  },
};
