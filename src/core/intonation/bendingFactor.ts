/** Second-order share for a string pinned at one end and clamped at the other. */
const SECOND_ORDER = 1 + Math.PI ** 2 / 2;

/**
 * Rise of pitch by bending, as a factor, 1 + B + (1 + π²/2)·B²: string pinned at the saddle, clamped at fret or nut.
 * Good to 0.013 cents at B = 0.01. Source: Anderson & Beausoleil, JASA 156(1), 683 (2024).
 */
export const bendingFactor = (b: number): number => 1 + b + SECOND_ORDER * b * b;
