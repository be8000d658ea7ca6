import type { SaddlePlace } from '../../bridge/types';
import { centsWithSaddle } from '../../intonation/modelString';
import type { StringModel } from '../../intonation/stringModels';

/** How the saddle is taken: its straight line as it stands, or with the crown shaped as near to each mark as it reaches. */
export type SaddleCrown = 'straight' | 'shaped';

/**
 * What the model says of every string at every fret with the saddle in place, cents, + sharp: one row a string in the
 * models' order, one column a fret. The nut stays where it is.
 *
 * Shaped, a string breaks at its mark, or as far from it as the crown leaves it.
 * @throws RangeError when a model has no place on the saddle, or a figure lies outside the model's domain
 */
export const centsGrid = (
  models: readonly StringModel[],
  saddle: SaddlePlace,
  frets: readonly number[],
  crown: SaddleCrown,
): readonly (readonly number[])[] =>
  models.map(({ id, name, spec, setup }) => {
    const place = saddle.strings.find((string) => string.id === id);
    if (place === undefined) throw new RangeError(`Expected a place on the saddle for string ${name} (${id}).`);
    const setback = crown === 'straight' ? place.line : place.wanted + place.crown.left;
    return centsWithSaddle(spec, setup, setback, frets);
  });
