import type { Point } from '../../geom/types';
import { plotLine } from './plotItems';
import { type KeyEntry, SAMPLE_WIDTH } from './plotKey';
import { DIAMOND, modelMark, wantedMark } from './plotMarks';

const lineSample =
  (id: string, role: 'plot-line' | 'plot-reach') =>
  ({ x, y }: Point) => [plotLine(id, 'key', role, { x: x - SAMPLE_WIDTH / 2, y }, { x: x + SAMPLE_WIDTH / 2, y })];

/** What the signs of the compensation plot mean. */
export const compensationKey = (withModel: boolean): readonly KeyEntry[] => [
  { id: 'wanted', text: 'wanted', sample: (middle) => [wantedMark('key-wanted-sign', 'key', middle)] },
  ...(withModel
    ? [
        {
          id: 'model',
          text: 'model, bar ± at 95 %',
          sample: (middle: Point) => modelMark('key-model-sign', 'key', middle, DIAMOND),
        },
      ]
    : []),
  { id: 'line', text: 'straight saddle', sample: lineSample('key-line-sign', 'plot-line') },
  { id: 'reach', text: 'reach of the crown', sample: lineSample('key-reach-sign', 'plot-reach') },
];
