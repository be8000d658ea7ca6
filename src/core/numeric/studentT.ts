import { incompleteBeta } from './incompleteBeta';
import { findRoot } from './rootFinding';

/** From here on the t distribution is taken for the normal one: its factors differ by less than 2 in a million. */
const MANY_DEGREES = 1e6;

/** ln t is sought here: e^±60 spans every factor that a probability held in a double can ask for. */
const LOG_RANGE = 60;

/**
 * The two-sided Student factor: |t| stays below it with the given probability. 0.95 and 16 give 2.12, which is the
 * coverage factor of GUM (JCGM 100:2008) annex G, whole degrees of freedom or not.
 *
 * @param probability inside 0 to 1
 * @param degreesOfFreedom at least 0.5; Infinity gives the normal distribution
 * @throws RangeError when either is out of range
 */
export function studentT(probability: number, degreesOfFreedom: number): number {
  if (!(probability > 0 && probability < 1))
    throw new RangeError(`Expected a probability between 0 and 1, got ${probability}.`);
  if (!(degreesOfFreedom >= 0.5))
    throw new RangeError(`Expected at least 0.5 degrees of freedom, got ${degreesOfFreedom}.`);
  const degrees = Math.min(degreesOfFreedom, MANY_DEGREES);
  const excess = (logT: number): number => {
    const square = Math.exp(2 * logT);
    const share = square / (degrees + square);
    const rest = degrees / (degrees + square);
    // The smaller of the two tails is compared, so that neither loses its digits.
    if (probability < 0.5) return incompleteBeta(share, 0.5, degrees / 2, rest) - probability;
    return 1 - probability - incompleteBeta(rest, degrees / 2, 0.5, share);
  };
  return Math.exp(findRoot(excess, -LOG_RANGE, LOG_RANGE, 1e-14));
}
