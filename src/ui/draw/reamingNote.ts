import { depthForDiameter, taperOfAngle } from '../../core/bridge/pinTaper';
import type { Pins } from '../../core/document/types';
import { showLength } from '../../core/units/showLength';

/** How a diameter and a depth are written, and the small step of diameter whose depth is told, mm. */
const UNITS = {
  mm: { diameter: { unit: 'mm', decimals: 2 }, depth: { unit: 'mm', decimals: 1 }, step: 0.1 },
  in: { diameter: { unit: 'in', decimals: 3 }, depth: { unit: 'in', decimals: 3 }, step: 0.127 },
} as const;

/** What the reamer has to do so that the pin seats, and how far a small error of the diameter goes. */
export const reamingNote = ({ hole, taper, underHead }: Pins, unit: 'mm' | 'in'): string => {
  const { diameter, depth, step } = UNITS[unit];
  if (hole >= underHead)
    return `A pilot hole of ${showLength(hole, diameter)} is no smaller than the pin under its head, ${showLength(underHead, diameter)}: nothing is left to ream, and the pin would be loose. Drill a smaller pilot hole.`;
  const change = taperOfAngle((taper * Math.PI) / 180);
  const deeper = showLength(depthForDiameter(hole, underHead, change), depth);
  const small = unit === 'mm' ? '0.1 mm' : showLength(step, diameter);
  return `Ream until the mouth of the hole reads ${showLength(underHead, diameter)}: the reamer goes ${deeper} deeper from where it first touches the rim of the pilot hole. ${small} on the diameter is ${showLength(step / change, depth)} of depth at ${Number(taper.toFixed(2))}° (1:${(1 / change).toFixed(1)}).`;
};
