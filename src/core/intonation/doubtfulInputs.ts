import { type Issue, issue } from '../result';
import type { Setup, StringSpec } from './types';

/** The figures of setup and string that a maker may have measured wrong. */
export const DOUBTFUL_INPUTS = [
  'action',
  'nutHeight',
  'relief',
  'fingerDistance',
  'pushDown',
  'coreDiameter',
  'modulus',
  'massPerLength',
  'kappa',
  'b0',
] as const;
export type DoubtfulInput = (typeof DOUBTFUL_INPUTS)[number];

/** One-sigma doubt of each figure in the figure's own unit; absent: none. Figures that the string does not use are passed over. */
export type InputDoubts = Readonly<Partial<Record<DoubtfulInput, number>>>;

/** String and setup as one mutable draft, for trying other figures without making new objects each time. */
export interface InputDraft {
  readonly string: StringSpec;
  readonly setup: Setup;
  /** The figure as it is, or undefined where this string does not use it. */
  readonly read: (input: DoubtfulInput) => number | undefined;
  /** What sets the figure; a value below 0 is folded back above it (relief may be negative). */
  readonly writer: (input: DoubtfulInput) => (value: number) => void;
}

/** A draft that starts from the given string and setup and leaves both as they are. */
export function inputDraft(string: StringSpec, setup: Setup): InputDraft {
  const setupFigures: Setup & Record<string, unknown> = { ...setup, pushDown: setup.pushDown ?? 0 };
  const elastic: StringSpec['elastic'] & Record<string, unknown> = { ...string.elastic };
  const holder = (input: DoubtfulInput): Record<string, unknown> => (input in setupFigures ? setupFigures : elastic);
  return {
    string: { ...string, elastic },
    setup: setupFigures,
    read: (input) => holder(input)[input] as number | undefined,
    writer: (input) => {
      const figures = holder(input);
      return input === 'relief'
        ? (value) => {
            figures[input] = value;
          }
        : (value) => {
            figures[input] = Math.abs(value);
          };
    },
  };
}

/** The figures in doubt that this string and setup use, with their doubt; zero doubts left out. */
export const doubtsInUse = (
  string: StringSpec,
  setup: Setup,
  doubts: InputDoubts,
): readonly { readonly input: DoubtfulInput; readonly sigma: number }[] => {
  const draft = inputDraft(string, setup);
  return DOUBTFUL_INPUTS.flatMap((input) => {
    const sigma = doubts[input] ?? 0;
    return sigma > 0 && draft.read(input) !== undefined ? [{ input, sigma }] : [];
  });
};

/** Every doubt that is not 0 or more. */
export const checkDoubts = (doubts: InputDoubts): readonly Issue[] =>
  DOUBTFUL_INPUTS.flatMap((input) => {
    const sigma = doubts[input] ?? 0;
    return sigma >= 0 && Number.isFinite(sigma)
      ? []
      : [issue(`doubts.${input}`, 'intonation.doubt', `expected a doubt of 0 or more, got ${sigma}`)];
  });
