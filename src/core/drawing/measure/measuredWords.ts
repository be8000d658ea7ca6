import type { MeasuredWay } from '../../document/dimensionTypes';
import { roundDecimal } from '../../units/roundDecimal';
import type { Measured } from './measuredOf';

const DEGREES = 180 / Math.PI;

/** An angle as it is read: "34.52°". */
const degreesWords = (angle: number): string => `${roundDecimal(angle * DEGREES, 2).toFixed(2)}°`;

/** The one figure of what was measured: "55.0 mm", "34.52°". */
export const measuredFigure = (measured: Measured, way: MeasuredWay, show: (mm: number) => string): string => {
  switch (measured.kind) {
    case 'distance':
      return show(measured.between[way]);
    case 'angle':
      return degreesWords(measured.angle);
    case 'gap':
      return show(measured.gap);
  }
};

/** All that was measured, in words: "55.0 mm straight, 54.9 mm across, 3.1 mm along". */
export const measuredWords = (measured: Measured, show: (mm: number) => string): string => {
  if (measured.kind !== 'distance') return measuredFigure(measured, 'straight', show);
  const { straight, across, along } = measured.between;
  return `${show(straight)} straight, ${show(across)} across, ${show(along)} along`;
};
