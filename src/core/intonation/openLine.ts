import type { ModelLaw } from './modelLaw';
import type { Setup } from './types';

/** The open string between nut and saddle, mm. */
export interface OpenLine {
  /** String above the fret-top plane at the saddle. */
  readonly saddleHeight: number;
  /** Open sounding length. */
  readonly openLength: number;
}

/**
 * The open string of a setup at a setback. Action is measured to the real top of fret 12, relief included, and is held:
 * the line from the nut through that clearance goes on to the saddle, s = b + (h12 + y12 − b)·(X0 + dS + dN)/(X0/2 + dN).
 * With `held` 'height' the saddle keeps the height that it has at no setback.
 * @param twelfthDip share of the relief at fret 12, from the fret grid
 */
export function openLine(
  setup: Setup,
  twelfthDip: number,
  held: ModelLaw['held'],
  saddle: number,
  nut: number,
): OpenLine {
  const { scaleLength, nutHeight, action, relief } = setup;
  const along = scaleLength + saddle + nut;
  const riseToTwelfth = action - relief * twelfthDip - nutHeight;
  const rise = held === 'action' ? (riseToTwelfth * along) / (scaleLength / 2 + nut) : 2 * riseToTwelfth;
  return { saddleHeight: nutHeight + rise, openLength: Math.sqrt(along * along + rise * rise) };
}
