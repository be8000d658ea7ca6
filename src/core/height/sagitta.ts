/**
 * How far a circle through the origin falls away beside it, mm: R − √(R² − x²), written so that no digits are lost.
 * @param radius mm, above 0; null for a flat surface
 * @param x distance from the highest point, mm, less than the radius
 * @throws RangeError outside that
 */
export const sagitta = (radius: number | null, x: number): number => {
  if (!Number.isFinite(x)) throw new RangeError(`Expected a finite distance, got ${x}.`);
  if (radius === null) return 0;
  if (!(radius > Math.abs(x)) || !Number.isFinite(radius))
    throw new RangeError(`Expected a radius above the distance ${Math.abs(x)}, got ${radius}.`);
  return (x * x) / (radius + Math.sqrt(radius * radius - x * x));
};
