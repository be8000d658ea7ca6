import { clampForce } from '../../../core/glue/clampForce';
import type { PressureRange } from '../../../core/glue/pressureClaims';

/** A force in both units, whole: "3103 N · 698 lbf". */
export const forceText = ({ newton, lbf }: ReturnType<typeof clampForce>): string =>
  `${newton.toFixed(0)} N · ${lbf.toFixed(0)} lbf`;

/** Pounds a square inch as a claim gives it: "100 to 150", "9.8 to 12.3". */
export const psiText = ({ least, most }: PressureRange): string => {
  const text = (psi: number): string => (psi < 50 ? psi.toFixed(1) : psi.toFixed(0));
  return `${text(least)} to ${text(most)}`;
};

/** What a range of pressures puts on an area, in each unit: "1035 to 1552 N", "233 to 349 lbf". area mm². */
export const forceRange = (
  area: number,
  { least, most }: PressureRange,
): { readonly newton: string; readonly lbf: string } => {
  const [low, high] = [clampForce(area, least), clampForce(area, most)];
  return {
    newton: `${low.newton.toFixed(0)} to ${high.newton.toFixed(0)} N`,
    lbf: `${low.lbf.toFixed(0)} to ${high.lbf.toFixed(0)} lbf`,
  };
};
