import type { CrownPlace } from '../bridge/crownReach';
import type { SaddlePlace } from '../bridge/types';
import type { CompensationBy } from '../document/types';
import type { DesignCheck } from './types';

const names = (strings: readonly { readonly name: string }[]): string => strings.map(({ name }) => name).join(', ');

const worst = (places: readonly CrownPlace[]): number => Math.max(0, ...places.map(({ left }) => Math.abs(left)));

/**
 * Whether one straight saddle of this thickness can be shaped to every string's mark, and, while a rule of thumb or the
 * maker's own figures stand, to the model's mark as well.
 */
export const crownChecks = (by: CompensationBy, saddle: SaddlePlace): readonly DesignCheck[] => {
  const short = saddle.strings.filter(({ crown }) => !crown.reached);
  const own: DesignCheck =
    short.length === 0
      ? {
          id: 'crown',
          verdict: 'good',
          message: 'The saddle can be shaped to every string’s mark.',
          lengths: [],
          source: null,
        }
      : {
          id: 'crown',
          verdict: 'look',
          message: `The saddle is too thin to be shaped to the mark of ${names(short)}; {0} is left at the worst.`,
          lengths: [worst(short.map(({ crown }) => crown))],
          source: null,
        };
  if (by === 'strings') return [own];
  const modelled = saddle.strings.flatMap(({ name, model }) => (model === null ? [] : [{ name, crown: model.crown }]));
  if (modelled.length === 0) return [own];
  const beyond = modelled.filter(({ crown }) => !crown.reached);
  return [
    own,
    beyond.length === 0
      ? {
          id: 'crown-model',
          verdict: 'good',
          message: 'The model’s mark for every string lies within the crown’s reach too.',
          lengths: [],
          source: null,
        }
      : {
          id: 'crown-model',
          verdict: 'look',
          message: `One saddle cannot serve both: the model’s mark for ${names(beyond)} lies up to {0} beyond the crown’s reach.`,
          lengths: [worst(beyond.map(({ crown }) => crown))],
          source: null,
        },
  ];
};
