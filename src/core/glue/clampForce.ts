/** One pound-force, N, exactly: 0.45359237 kg × 9.80665 m/s² (ISO 80000-4, conversion annex). */
const NEWTON_PER_POUND = 4.4482216152605;
const MM_PER_INCH = 25.4;

/**
 * The force that puts a pressure on an area: in all, over every clamp. area mm², pressure in pounds-force per square inch.
 * A figure to know by, not an order to reach on a thin top. Throws RangeError when either is not finite or below 0.
 */
export const clampForce = (area: number, pressurePsi: number): { readonly newton: number; readonly lbf: number } => {
  if (![area, pressurePsi].every((figure) => Number.isFinite(figure) && figure >= 0))
    throw new RangeError('Expected an area in mm² and a pressure in psi, neither below 0.');
  const lbf = (area / MM_PER_INCH ** 2) * pressurePsi;
  return { newton: lbf * NEWTON_PER_POUND, lbf };
};
