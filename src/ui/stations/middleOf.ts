import type { SaddlePlace } from '../../core/bridge/types';
import type { StringModel } from '../../core/intonation/stringModels';
import { fitSaddleLine } from '../../core/numeric/fitSaddleLine';

/** Behind the octave line on the centreline, mm: the saddle as it stands, and a straight one laid through what the model says. */
export const middleOf = (
  saddle: SaddlePlace,
  models: readonly StringModel[],
): { readonly line: number; readonly model: number } => {
  const first = saddle.strings[0];
  const line = first === undefined ? 0 : first.line - saddle.slope * first.x;
  const points = saddle.strings.map(({ x }, index) => ({ x, setback: models[index]?.saddle ?? 0 }));
  const fitted = fitSaddleLine(points, 'least-squares');
  return { line, model: fitted.ok ? fitted.value.centre : line };
};
