import type { RampMark } from '../../bridge/rampMarks';
import { polyline } from '../polyline';
import type { Item } from '../types';

/** String ramps as marks on the upper face, each a part of its pin. */
export const drawRamps = (ramps: readonly RampMark[]): readonly Item[] =>
  ramps.map(
    ({ pin, corners: [one, other], tip }): Item => ({
      kind: 'path',
      id: `${pin.id}-ramp`,
      part: pin.label,
      role: 'slot',
      layer: 'pins',
      path: polyline(one, tip, other),
    }),
  );
