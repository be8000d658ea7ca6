import { ok, type Result } from '../result';
import type { DoubtfulInput, InputDoubts } from './doubtfulInputs';
import { elasticAt } from './elasticAt';
import { fretCents } from './fretCents';
import { fretGrid } from './fretGrid';
import { exactLaw } from './modelLaw';
import { openLine } from './openLine';
import { type DoubtShare, setbackSensitivity } from './setbackSensitivity';
import type { FitOptions, Setup, StringSpec } from './types';
import { doubtsFor } from './usualDoubts';

/** What the model says of one string. */
export interface ModelledString {
  /** Fitted setback of the saddle and of the nut, mm; saddle + away from the nut, nut − toward the saddle. */
  readonly saddle: number;
  readonly nut: number;
  /** What is left over the fitted frets, cents. */
  readonly rms: number;
  /** One sigma of the saddle setback, mm. */
  readonly sigma: number;
  /** What makes that doubt, largest first. */
  readonly shares: readonly DoubtShare[];
  /** κ and B0 at this scale and pitch. */
  readonly kappa: number;
  readonly b0: number;
  /** String above the fret-top plane at the saddle, no compensation, mm. */
  readonly saddleHeight: number;
}

const figureOf =
  (string: StringSpec) =>
  (input: DoubtfulInput): number | undefined => {
    const figures: Readonly<Record<string, unknown>> = { ...string.elastic };
    const figure = figures[input];
    return typeof figure === 'number' ? figure : undefined;
  };

/** Fits one string and says how sure the answer is. */
export const modelString = (
  string: StringSpec,
  setup: Setup,
  options: FitOptions,
  ownDoubts: InputDoubts,
): Result<ModelledString> => {
  const sensitivity = setbackSensitivity(string, setup, options, doubtsFor(ownDoubts, figureOf(string)));
  if (!sensitivity.ok) return sensitivity;
  const { fit, sigma, shares } = sensitivity.value;
  const { twelfthDip } = fretGrid(setup.scaleLength, setup.reliefFrets, options.frets);
  const line = openLine(setup, twelfthDip, exactLaw.held, 0, 0);
  const { kappa, b0 } = elasticAt(string, setup.scaleLength, line.openLength);
  return ok({
    saddle: fit.saddle,
    nut: fit.nut,
    rms: fit.rms,
    sigma,
    shares,
    kappa,
    b0,
    saddleHeight: line.saddleHeight,
  });
};

/** Errors left at each fret when the saddle stands at `saddle` and the nut where it is, cents, + sharp. */
export const centsWithSaddle = (
  string: StringSpec,
  setup: Setup,
  saddle: number,
  frets: readonly number[],
): readonly number[] => fretCents(string, setup, { saddle, nut: 0 }, frets);
