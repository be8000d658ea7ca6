/** One conventional inch of mercury, and one pound-force on a square inch, Pa (NIST SP 811, appendix B.8). */
const PA_PER_IN_HG = 3386.389;
const PA_PER_PSI = 6894.757;

/**
 * What a vacuum presses with, pounds a square inch, from its gauge in inches of mercury below the air outside. Throws
 * RangeError outside 0 to 30.
 */
export const vacuumPressure = (inchesOfMercury: number): number => {
  if (!(inchesOfMercury >= 0 && inchesOfMercury <= 30))
    throw new RangeError('Expected a vacuum from 0 to 30 inches of mercury.');
  return (inchesOfMercury * PA_PER_IN_HG) / PA_PER_PSI;
};
