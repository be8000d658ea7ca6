import { useMemo } from 'react';
import type { LengthStyle } from '../core/units/formatLength';
import { formatLength } from '../core/units/formatLength';
import { showLength } from '../core/units/showLength';
import { lengthStyle } from '../store/device';
import { useStore } from './useStore';
import { withSign } from './withSign';

/** Lengths as this maker reads them. */
export interface Lengths {
  readonly style: LengthStyle;
  /** "634.80" */
  bare(mm: number): string;
  /** "634.80 mm" */
  withUnit(mm: number): string;
  /** "+0.84", "−1.09" */
  signed(mm: number): string;
}

/** Writes lengths in the unit and style of this device. */
export const useLengths = (): Lengths => {
  const device = useStore((state) => state.device);
  return useMemo(() => {
    const style = lengthStyle(device);
    return {
      style,
      bare: (mm) => formatLength(mm, style),
      withUnit: (mm) => showLength(mm, style),
      signed: (mm) => withSign(mm, formatLength(Math.abs(mm), style)),
    };
  }, [device]);
};
