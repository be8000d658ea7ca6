import type { SaddlePlace, SlotPlace } from '../../../bridge/types';

/** One place across the saddle that a gauge is set and read at. Lengths in mm, along the centreline from the nut datum. */
export interface GaugeNumber {
  readonly id: 'treble' | 'centre' | 'bass';
  /** Of the outer string there, or 0. */
  readonly x: number;
  readonly slotFront: number;
  readonly breakPoint: number;
}

/** Slot front and break point at the outer strings and on the centreline, the treble first. */
export const gaugeNumbers = (saddle: SaddlePlace, slot: SlotPlace): readonly GaugeNumber[] => {
  const at = (id: GaugeNumber['id'], x: number): GaugeNumber => ({
    id,
    x,
    slotFront: slot.front + saddle.slope * x,
    breakPoint: saddle.centre + saddle.slope * x,
  });
  return [at('treble', saddle.strings[0]?.x ?? 0), at('centre', 0), at('bass', saddle.strings.at(-1)?.x ?? 0)];
};
