import type { StringCompensation } from '../../bridge/types';
import type { Item } from '../types';
import type { CompensationLayout } from './compensationLayout';
import { plotLine } from './plotItems';
import { modelMark, wantedMark } from './plotMarks';

/** The saddle line, the dashes of its crown's reach, and each string's marks, for a right hand. */
export const compensationMarks = (
  strings: readonly StringCompensation[],
  { centre, slope, ends, reach, doubts, scale, at }: CompensationLayout,
): readonly Item[] => {
  const along = (id: string, role: 'plot-line' | 'plot-reach', beyond: number): Item => {
    const end = (x: number) => at(x, centre + slope * x + beyond);
    return plotLine(id, 'saddle', role, end(ends[0]), end(ends[1]));
  };
  return [
    along('reach-ahead', 'plot-reach', reach.ahead),
    along('reach-behind', 'plot-reach', reach.behind),
    along('saddle-line', 'plot-line', 0),
    ...strings.flatMap(({ x, wanted, model }, index): readonly Item[] => {
      const part = `string ${index + 1}`;
      const bar = (doubts[index] ?? 0) * scale.along;
      return [
        ...(model === null ? [] : modelMark(`model-${index + 1}`, part, at(x, model.setback), bar)),
        wantedMark(`wanted-${index + 1}`, part, at(x, wanted)),
      ];
    }),
  ];
};
