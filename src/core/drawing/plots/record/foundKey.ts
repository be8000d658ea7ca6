import { circlePath } from '../../../geom/circlePath';
import { plotLine, plotPath } from '../plotItems';
import { type KeyEntry, SAMPLE_WIDTH } from '../plotKey';
import { DIAMOND, modelMark } from '../plotMarks';

/** Radius of an instrument's ring, mm of paper. */
export const RING = 0.8;

/** What the signs of the plot of found against predicted mean. */
export const foundKey: readonly KeyEntry[] = [
  {
    id: 'found',
    text: 'an instrument',
    sample: (middle) => [plotPath('key-found-sign', 'key', 'plot-model', circlePath(middle, RING))],
  },
  {
    id: 'next',
    text: 'the next, ± 19 of 20',
    sample: (middle) => modelMark('key-next-sign', 'key', middle, DIAMOND),
  },
  {
    id: 'model',
    text: 'the model',
    sample: ({ x, y }) => [
      plotLine('key-model-sign', 'key', 'plot-line', { x: x - SAMPLE_WIDTH / 2, y }, { x: x + SAMPLE_WIDTH / 2, y }),
    ],
  },
];
