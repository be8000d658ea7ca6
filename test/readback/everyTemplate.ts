import type { Wanted } from './makeTemplate';

/** Each instrument on each paper, in each unit, for each hand. */
export const EVERY_TEMPLATE: readonly Required<Wanted>[] = (['steel', 'classical', 'ukulele'] as const).flatMap(
  (instrument) =>
    (['a4', 'letter'] as const).flatMap((paper) =>
      (['mm', 'in'] as const).flatMap((unit) =>
        (['right', 'left'] as const).map((hand) => ({ instrument, paper, unit, hand })),
      ),
    ),
);
