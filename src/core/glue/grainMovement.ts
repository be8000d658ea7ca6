/** Where the coefficients hold, % moisture: Wood Handbook, FPL-GTR-190, chapter 13. */
export const MOISTURE_RANGE = { least: 6, most: 14 } as const;

/**
 * How much wider a piece becomes across its grain, in the unit of its width: width × coefficient × change of moisture, +
 * when it takes up water (Wood Handbook, FPL-GTR-190, chapter 13). Moisture in percent of dry mass. Throws RangeError
 * when a figure is not finite, or width or coefficient lies below 0.
 */
export const grainMovement = (width: number, coefficient: number, from: number, to: number): number => {
  if (![width, coefficient].every((figure) => Number.isFinite(figure) && figure >= 0) || !Number.isFinite(to - from))
    throw new RangeError('Expected a width and a coefficient that are not below 0, and two moisture contents.');
  return width * coefficient * (to - from);
};
