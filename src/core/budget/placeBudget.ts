import { combineUncertainty } from '../numeric/combineUncertainty';
import { ERROR_SOURCES, type ErrorSource } from './errorSources';

/** What the errors act through, mm. */
export interface BudgetCase {
  /** Line of the fret tops over the top at the bridge. */
  readonly height: number;
  /** Over all, from wing to wing: what is set at both ends. */
  readonly length: number;
  /** Square line to break point: what the paper carries. */
  readonly carried: number;
  /** Between both locating pins; 0 with fewer than two. */
  readonly apart: number;
  /** From the centreline to the outer strings at the saddle, the farther one. */
  readonly reach: number;
  /** At the 12th fret, for 1 mm along the centreline. */
  readonly centsPerMm: number;
}

/** What one error does by itself, one sigma: along and aside mm, turn radians, cents at the worse outer string. */
export interface BudgetRow {
  readonly source: ErrorSource;
  /** In use, in its own unit. */
  readonly size: number;
  readonly along: number;
  readonly aside: number;
  readonly turn: number;
  readonly cents: number;
  /** Of the variance of the pitch, 0 to 1. */
  readonly share: number;
}

export interface PlaceBudget {
  readonly rows: readonly BudgetRow[];
  /** All of it, one sigma. */
  readonly along: number;
  readonly aside: number;
  readonly turn: number;
  readonly cents: number;
  /** Which to improve first, and the cents that would be left, one sigma, with it halved. */
  readonly first: { readonly row: BudgetRow; readonly left: number };
}

/** Half-width of an even spread to its standard deviation: JCGM 100:2008, 4.3.7. */
const EVEN = 1 / Math.sqrt(3);

/**
 * One sigma along, aside and turned from each size. What is the same at both ends (correlation 1: the eye, the square, the
 * paper) moves all of it and turns nothing; what each end has by itself moves the middle by σ/√2 and turns it by σ√2/length;
 * so do two holes over the distance between them. JCGM 100:2008 equation 13 for two ends.
 */
const effects = (id: ErrorSource['id'], size: number, of: BudgetCase) => {
  const ends = (sigma: number, apart: number) => ({
    along: sigma / Math.SQRT2,
    aside: sigma / Math.SQRT2,
    turn: apart === 0 ? 0 : (sigma * Math.SQRT2) / apart,
  });
  switch (id) {
    case 'placeRule':
      return ends(size, of.length);
    case 'placeParallax':
      return { along: size, aside: 0, turn: 0 };
    case 'placeSquare':
      return { along: of.height * Math.sin(size), aside: 0, turn: 0 };
    case 'placeTemplate':
      return ends(size, of.length);
    case 'placePaper':
    case 'placePrint':
      return { along: size * of.carried, aside: 0, turn: 0 };
    case 'placeTape':
      return ends(size, of.length);
    case 'placeDrill':
      return ends(size, of.apart);
    case 'placePin':
      return ends((size / 2) * EVEN, of.apart);
  }
};

/**
 * How far reading, taping, drilling and printing can carry the bridge before wood is cut: the law of propagation of
 * uncertainty, JCGM 100:2008 (GUM) 5.1.2, causes independent of one another. own: sizes by their fields' names where the
 * maker's differ. sources: what counts where they do not.
 * Throws RangeError when a size or length is not finite.
 */
export const placeBudget = (
  of: BudgetCase,
  own: Readonly<Record<string, number>>,
  sources: readonly ErrorSource[] = ERROR_SOURCES,
): PlaceBudget => {
  const bare = sources.map((source) => {
    const size = own[source.id] ?? source.usual;
    const { along, aside, turn } = effects(source.id, size, of);
    return { source, size, along, aside, turn, cents: Math.hypot(along, turn * of.reach) * of.centsPerMm };
  });
  const all = (pick: (row: (typeof bare)[number]) => number): number =>
    combineUncertainty(bare.map((row) => ({ effect: pick(row) }))).sigma;
  const cents = all((row) => row.cents);
  const rows = bare.map((row) => ({ ...row, share: cents === 0 ? 0 : row.cents ** 2 / cents ** 2 }));
  const [worst] = [...rows].sort((one, other) => other.share - one.share);
  if (worst === undefined) throw new RangeError('Expected at least one source of error.');
  return {
    rows,
    along: all((row) => row.along),
    aside: all((row) => row.aside),
    turn: all((row) => row.turn),
    cents,
    first: { row: worst, left: Math.sqrt(Math.max(0, cents ** 2 - 0.75 * worst.cents ** 2)) },
  };
};
