import { depthForDiameter, taperOfAngle } from '../../../bridge/pinTaper';
import type { Pins, Project } from '../../../document/types';
import type { LengthStyle } from '../../../units/formatLength';
import { showLength } from '../../../units/showLength';
import { fineLength } from '../items/fineLength';

/** How far a drill goes on into the backing block, mm: common practice, no source. */
const INTO_BACKING = 1;

const BLANK = '_______';

/**
 * The depth stop for holes that go through, as a sum with blanks for what only the maker can read: bridge, top, plate.
 */
export const stopWords = ({ bridge, body }: Project, style: LengthStyle): readonly string[] => {
  const show = (mm: number): string => showLength(mm, style);
  const { thickness, slot, locating } = bridge;
  const plate = body?.plate === null || body === null ? `plate ${BLANK}` : `plate ${show(body.plate.thickness)}`;
  const rest = `top ${BLANK} + ${plate} + ${show(INTO_BACKING)} = ${BLANK}`;
  const slotEnds = locating.site === 'slot-ends';
  return [
    `Depth stop, full width of the drill: bridge ${show(thickness)} + ${rest}. Read the top at the soundhole’s edge.`,
    ...(slotEnds
      ? [
          `Locating pins with the slot already cut: only ${show(thickness - slot.depth)} of bridge under its floor, in place of ${show(thickness)}.`,
        ]
      : []),
  ];
};

/** How far the reamer goes until the pin seats, and what a small error of it does. */
export const seatWords = ({ hole, taper, underHead }: Pins, style: LengthStyle): string => {
  const unit = style.unit === 'mm' ? 'mm' : 'in';
  const fine = (mm: number): string => `${fineLength(mm, style.unit)} ${unit}`;
  if (hole >= underHead)
    return `The pilot of ${fine(hole)} is no smaller than the pin under its head, ${fine(underHead)}: the pin would be loose. Drill a smaller pilot.`;
  const change = taperOfAngle((taper * Math.PI) / 180);
  const deeper = showLength(depthForDiameter(hole, underHead, change), style);
  return `Ream by hand: from where the reamer first touches the rim of the pilot it goes ${deeper} deeper, until the mouth reads ${fine(underHead)} (reamer ${Number(taper.toFixed(2))}°, 1:${(1 / change).toFixed(1)}). Mark that depth on the reamer with tape, stop short, try the pin, go on.`;
};
