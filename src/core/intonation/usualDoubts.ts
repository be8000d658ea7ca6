import type { DoubtfulInput, InputDoubts } from './doubtfulInputs';

/** What a maker should believe of a figure they have not doubted themselves: one sigma, and where that comes from. */
export interface UsualDoubt {
  readonly input: DoubtfulInput;
  /** "action", as it reads in a sentence. */
  readonly name: string;
  /** One sigma: mm, GPa, g/m, or no unit; as a share of the figure where `relative`. */
  readonly sigma: number;
  readonly relative: boolean;
  readonly source: string;
}

const READING = 'a careful reading: common practice, no source';

/** Usual doubts of the figures behind a setback, each editable by the maker. */
export const USUAL_DOUBTS: readonly UsualDoubt[] = [
  { input: 'action', name: 'action', sigma: 0.1, relative: false, source: READING },
  { input: 'nutHeight', name: 'nut height', sigma: 0.05, relative: false, source: READING },
  { input: 'relief', name: 'neck relief', sigma: 0.05, relative: false, source: READING },
  { input: 'fingerDistance', name: 'finger distance', sigma: 3, relative: false, source: 'players differ: estimated' },
  { input: 'pushDown', name: 'push-down', sigma: 0.1, relative: false, source: 'players differ: estimated' },
  {
    input: 'coreDiameter',
    name: 'core',
    sigma: 0.0127,
    relative: false,
    source: 'half a thousandth of an inch; wound cores are seldom published: estimated',
  },
  { input: 'modulus', name: 'modulus', sigma: 5, relative: false, source: 'music wire is given as 190 to 210 GPa' },
  { input: 'massPerLength', name: 'mass', sigma: 0.01, relative: true, source: 'charts agree to about 1 %: estimated' },
  {
    input: 'kappa',
    name: 'stretch (κ)',
    sigma: 0.05,
    relative: true,
    source: 'spread between sets, Anderson & Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024): estimated from it',
  },
  {
    input: 'b0',
    name: 'bending (B0)',
    sigma: 0.05,
    relative: true,
    source: 'spread between sets, Anderson & Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024): estimated from it',
  },
];

/** Doubts for one string: the maker's own where given, else the usual ones. `figure` gives a figure's value for relative doubts. */
export const doubtsFor = (own: InputDoubts, figure: (input: DoubtfulInput) => number | undefined): InputDoubts =>
  Object.fromEntries(
    USUAL_DOUBTS.map(({ input, sigma, relative }) => [
      input,
      own[input] ?? (relative ? sigma * Math.abs(figure(input) ?? 0) : sigma),
    ]),
  );
