import type { ElasticState } from './elasticAt';
import type { FitOptions, Setback, Setup } from './types';

/**
 * The linear solution for a fit's setback, mm, from which the fit sets out: flat frets, finger at the fret, the length
 * term dropped, so it runs up to 0.15 mm too long on steel.
 *
 * With u = 2^(n/12) − 1, g = 1 + u, c = s − b: Q_n = (g·b + u·c)²/(2·u·X0²), σ_k = Σu^k, Q_k = Σu^k·Q_n,
 * p = (1 + π²)·B0²/2, v1 = σ2·B0 + p·(2σ2 + σ3) + κ·Q1/2, v0 = σ1·B0 + p·(2σ1 + σ2) + κ·Q0/2.
 * Saddle alone: X0·v1/σ2. With the nut: D = σ0σ2 − σ1², saddle X0·(σ0·v1 − σ1·v0)/D, nut X0·(σ1·v1 − σ2·v0)/D.
 * Source: the normal equations of Anderson & Beausoleil, JASA 156(1), 683 (2024), written for any frets.
 * @param options a free nut needs two different frets
 */
export function setbackStart(elastic: ElasticState, setup: Setup, options: FitOptions): Setback {
  const { kappa, b0 } = elastic;
  const { scaleLength, nutHeight } = setup;
  const rise = 2 * (setup.action - nutHeight);
  const p = ((1 + Math.PI ** 2) / 2) * b0 * b0;
  let s1 = 0;
  let s2 = 0;
  let v0 = 0;
  let v1 = 0;
  for (const fret of options.frets) {
    const u = 2 ** (fret / 12) - 1;
    const stretch = ((1 + u) * nutHeight + u * rise) ** 2 / (2 * u * scaleLength * scaleLength);
    const shift = u * b0 + p * (2 * u + u * u) + (kappa * stretch) / 2;
    s1 += u;
    s2 += u * u;
    v0 += shift;
    v1 += u * shift;
  }
  if (!options.freeNut) return { saddle: (scaleLength * v1) / s2, nut: 0 };
  const s0 = options.frets.length;
  const determinant = s0 * s2 - s1 * s1;
  return {
    saddle: (scaleLength * (s0 * v1 - s1 * v0)) / determinant,
    nut: (scaleLength * (s1 * v1 - s2 * v0)) / determinant,
  };
}
