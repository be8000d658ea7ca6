/** One pound-force in newtons: 0.45359237 kg times 9.80665 m/s², both exact. */
const NEWTON_PER_POUND = 0.45359237 * 9.80665;

/** Newtons as pounds-force. */
export const poundsForce = (newton: number): number => newton / NEWTON_PER_POUND;
