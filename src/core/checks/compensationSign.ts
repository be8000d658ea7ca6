import type { SaddlePlace } from '../bridge/types';
import type { DesignCheck } from './types';

/** A string that breaks ahead of the octave line, or is asked to, is nearly always a slip of the pen: fretted notes would play flat. */
export const compensationSign = (saddle: SaddlePlace): readonly DesignCheck[] =>
  saddle.strings.flatMap(({ id, name, line, wanted }): readonly DesignCheck[] => {
    const least = Math.min(line, wanted);
    if (least >= 0) return [];
    const does = line < 0 ? 'breaks' : 'is asked to break';
    return [
      {
        id: `compensation-${id}`,
        verdict: 'look',
        message: `String ${name} ${does} {0} ahead of the octave line: negative compensation.`,
        lengths: [-least],
        source: null,
      },
    ];
  });
