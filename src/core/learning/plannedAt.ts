import { centsWithSaddle } from '../intonation/modelString';
import type { StringModel } from '../intonation/stringModels';

/**
 * What the model leaves on purpose at one fret when every string breaks where the model itself wants it, so that the frets
 * of its range come out best together, cents, + sharp, string 1 first.
 */
export const plannedAt = (models: readonly StringModel[], fret: number): readonly number[] =>
  models.map(({ spec, setup, saddle }) => centsWithSaddle(spec, setup, saddle, [fret])[0] ?? 0);
