import type { SaddlePlace } from '../bridge/types';
import type { DesignCheck } from './types';

/** A string that breaks ahead of the octave line is nearly always a slip of the pen: fretted notes would play flat. */
export const compensationSign = (saddle: SaddlePlace): readonly DesignCheck[] =>
  saddle.strings
    .filter(({ line }) => line < 0)
    .map(({ id, name, line }) => ({
      id: `compensation-${id}`,
      verdict: 'look' as const,
      message: `String ${name} breaks {0} ahead of the octave line: negative compensation.`,
      lengths: [-line],
      source: null,
    }));
