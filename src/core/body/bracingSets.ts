import type { Brace, Plate } from '../document/bodyTypes';
import { MM_PER_INCH } from '../units/mmPerInch';

/** A brace of a set: x + toward the treble side, y behind the octave line, mm. */
type SetBrace = Pick<Brace, 'name' | 'kind' | 'from' | 'to' | 'width'>;

/** A usual bracing to start from, for one scale length; another scale stretches its places, not its sections. */
export interface BracingSet {
  readonly id: string;
  readonly name: string;
  readonly scaleLength: number;
  readonly braces: readonly SetBrace[];
  /** front: behind the octave line. */
  readonly plate: Omit<Plate, 'aside' | 'read'> | null;
  /** centre: behind the octave line. */
  readonly soundhole: { readonly centre: number; readonly across: number };
  readonly source: string;
}

const SIDES = [
  { side: 'bass', sign: -1 },
  { side: 'treble', sign: 1 },
] as const;

/** The same brace on both sides, told on the treble side. */
const onBothSides = (name: string, { from, to, ...section }: Omit<SetBrace, 'name'>): readonly SetBrace[] =>
  SIDES.map(({ side, sign }) => ({
    ...section,
    name: `${name}, ${side}`,
    from: { x: sign * from.x, y: from.y },
    to: { x: sign * to.x, y: to.y },
  }));

const QUARTER = MM_PER_INCH / 4;
const FIVE_16 = (5 / 16) * MM_PER_INCH;

/** The legs cross 40 mm behind the soundhole's edge, and open by 98° toward the tail: 1.15 across for 1 along. */
const X_BRACED: BracingSet = {
  id: 'x-braced',
  name: 'X-braced steel-string',
  scaleLength: 645,
  braces: [
    ...onBothSides('X-leg', { kind: 'x-leg', from: { x: 0, y: -57 }, to: { x: 172.5, y: 93 }, width: FIVE_16 }),
    { name: 'tone bar 1', kind: 'tone-bar', from: { x: 105, y: 34 }, to: { x: -70, y: 112 }, width: QUARTER },
    { name: 'tone bar 2', kind: 'tone-bar', from: { x: 150, y: 73 }, to: { x: -20, y: 150 }, width: QUARTER },
    ...onBothSides('finger brace 1', { kind: 'finger', from: { x: 75, y: 8 }, to: { x: 165, y: -30 }, width: QUARTER }),
    ...onBothSides('finger brace 2', {
      kind: 'finger',
      from: { x: 115, y: 43 },
      to: { x: 180, y: 18 },
      width: QUARTER,
    }),
  ],
  plate: { front: -10, along: 54, acrossFront: 88, acrossBack: 140, thickness: 0.1 * MM_PER_INCH },
  soundhole: { centre: -148, across: 4 * MM_PER_INCH },
  source: 'from memory; plate thickness: frets.com, new bridge plate',
};

const FAN_BRACED: BracingSet = {
  id: 'fan-braced',
  name: 'Fan-braced classical',
  scaleLength: 650,
  braces: [
    {
      name: 'lower transverse brace',
      kind: 'transverse',
      from: { x: -125, y: -105 },
      to: { x: 125, y: -105 },
      width: 6,
    },
    ...[-3, -2, -1, 0, 1, 2, 3].map(
      (place, index): SetBrace => ({
        name: `fan ${index + 1}`,
        kind: 'fan',
        from: { x: 19 * place, y: -98 },
        to: { x: 33 * place, y: 95 },
        width: 5,
      }),
    ),
  ],
  plate: null,
  soundhole: { centre: -178, across: 85 },
  source: 'from memory; seven fans, counted from the bass side',
};

const LADDER_BRACED: BracingSet = {
  id: 'ladder-braced',
  name: 'Ladder-braced ukulele',
  scaleLength: 380,
  braces: [
    { name: 'upper transverse brace', kind: 'transverse', from: { x: -60, y: -138 }, to: { x: 60, y: -138 }, width: 6 },
    { name: 'lower transverse brace', kind: 'transverse', from: { x: -72, y: -50 }, to: { x: 72, y: -50 }, width: 6 },
  ],
  plate: { front: -8, along: 28, acrossFront: 90, acrossBack: 90, thickness: 1.5 },
  soundhole: { centre: -98, across: 57 },
  source: 'from memory',
};

/** Bracings to start from. Every figure is a guess until it is found on the instrument in hand. */
export const BRACING_SETS: readonly BracingSet[] = [X_BRACED, FAN_BRACED, LADDER_BRACED];
