import type { StringCompensation } from '../../bridge/types';
import type { Item } from '../types';
import type { CompensationLayout } from './compensationLayout';
import { plotText } from './plotItems';
import { stringLabels } from './stringLabels';

/** Pitch of rows of words, mm. */
export const WORD_ROW = 4.4;
const BELOW_PLOT = 3.4;
const ABOVE_PLOT = 4.5;

/** The strings' names below the plot and the names of its sides above, for a right hand; y 0 at the first division. */
export const compensationWords = (
  strings: readonly StringCompensation[],
  { scale, depth, half }: CompensationLayout,
): { readonly items: readonly Item[]; readonly rows: number } => {
  const labels = stringLabels(strings.map(({ name, x }) => ({ name, x: x * scale.across })));
  return {
    rows: 1 + Math.max(...labels.map(({ row }) => row)),
    items: [
      ...labels.map(({ x, row, text }, index) =>
        plotText(
          `name-${index + 1}`,
          `string ${index + 1}`,
          'note',
          { x, y: depth + BELOW_PLOT + row * WORD_ROW },
          text,
          'middle',
        ),
      ),
      plotText('treble', 'sides', 'heading', { x: half, y: -ABOVE_PLOT }, 'TREBLE', 'end'),
      plotText('nut-side', 'sides', 'note', { x: 0, y: -ABOVE_PLOT }, '↑ nut side', 'middle'),
      plotText('bass', 'sides', 'heading', { x: -half, y: -ABOVE_PLOT }, 'BASS', 'start'),
    ],
  };
};
