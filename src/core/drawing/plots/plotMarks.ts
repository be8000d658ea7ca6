import { circlePath } from '../../geom/circlePath';
import type { Point } from '../../geom/types';
import { polyline } from '../polyline';
import type { PathItem } from '../types';
import { plotLine, plotPath } from './plotItems';

/** Half the height and width of the model's diamond, mm: a dot lies inside it with paper all round. */
export const DIAMOND = 1.9;
const DOT_RADIUS = 0.85;
const HALF_CAP = 1;

/** What a string asks for: a filled dot. */
export const wantedMark = (id: string, part: string, at: Point): PathItem =>
  plotPath(id, part, 'plot-mark', circlePath(at, DOT_RADIUS));

/** What the model says: an open diamond, and a bar with caps `reach` to either side of it where it comes out of the diamond. */
export const modelMark = (id: string, part: string, { x, y }: Point, reach: number): readonly PathItem[] => {
  const diamond = polyline({ x, y: y - DIAMOND }, { x: x + DIAMOND, y }, { x, y: y + DIAMOND }, { x: x - DIAMOND, y });
  const whisker = (end: string, direction: 1 | -1): readonly PathItem[] => {
    const tip = y + direction * reach;
    return [
      plotLine(`${id}-${end}`, part, 'plot-model', { x, y: y + direction * DIAMOND }, { x, y: tip }),
      plotLine(`${id}-${end}-cap`, part, 'plot-model', { x: x - HALF_CAP, y: tip }, { x: x + HALF_CAP, y: tip }),
    ];
  };
  return [
    plotPath(id, part, 'plot-model', { ...diamond, closed: true }),
    ...(reach > DIAMOND ? [...whisker('less', -1), ...whisker('more', 1)] : []),
  ];
};
