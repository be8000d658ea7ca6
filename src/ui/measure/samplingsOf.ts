import type { Project } from '../../core/document/types';
import { DOUBTFUL_INPUTS, type DoubtfulInput } from '../../core/intonation/doubtfulInputs';
import type { SetbackSampling } from '../../core/intonation/monteCarloSetback';
import { fitOptions, type StringModel } from '../../core/intonation/stringModels';
import { doubtsFor } from '../../core/intonation/usualDoubts';

/** What is sampled for every string: the very figures, doubts and frets that its first-order ± comes from. */
export const samplingsOf = (
  models: readonly StringModel[],
  { compensation, doubts }: Pick<Project, 'compensation' | 'doubts'>,
  samples: number,
): readonly SetbackSampling[] => {
  const own = Object.fromEntries(
    DOUBTFUL_INPUTS.flatMap((input) => (doubts[input] === undefined ? [] : [[input, doubts[input]]])),
  );
  return models.map(({ spec, setup }, index) => {
    const figures: Readonly<Record<string, unknown>> = { ...spec.elastic };
    const figure = (input: DoubtfulInput): number | undefined => {
      const value = figures[input];
      return typeof value === 'number' ? value : undefined;
    };
    return {
      string: spec,
      setup,
      options: fitOptions(compensation.fit),
      doubts: doubtsFor(own, figure),
      samples,
      seed: index + 1,
    };
  });
};
