import { depthForDiameter, taperOfAngle } from '../../../bridge/pinTaper';
import type { BridgePlace } from '../../../bridge/types';
import type { Pins, Project } from '../../../document/types';
import type { LengthStyle } from '../../../units/formatLength';
import { showLength } from '../../../units/showLength';
import { fineLength } from '../items/fineLength';
import { depthStop, stopAt } from './depthStop';

const BLANK = '_______';

/** Why the bridge is not as thick at the locating pins as at its pins. */
const AT_PINS = {
  'slot-ends': 'Locating pins with the slot already cut: only {0} of bridge under its floor, in place of {1}.',
  'outer-pin-holes': '',
  free: 'Locating pins in the wings: {0} of bridge there, in place of {1}.',
} as const;

/**
 * The depth stop for holes that go through, as a sum with blanks for what only the maker can read: bridge, top, plate.
 */
export const stopWords = (project: Project, place: BridgePlace, style: LengthStyle): readonly string[] => {
  const stop = depthStop(project, place);
  const show = (mm: number | null): string => (mm === null ? BLANK : showLength(mm, style));
  const sum = `top ${show(stop.top)} + plate ${show(stop.plate)} + ${show(stop.backing)} = ${show(stopAt(stop, stop.bridge))}`;
  const there = AT_PINS[project.bridge.locating.site].replace('{0}', show(stop.atLocating));
  return [
    `Depth stop, full width of the drill: bridge ${show(stop.bridge)} + ${sum}. Read the top at the soundhole’s edge.`,
    ...(there === '' ? [] : [there.replace('{1}', show(stop.bridge))]),
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
