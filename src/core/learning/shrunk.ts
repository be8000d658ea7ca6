/**
 * A value drawn toward another by a factor from 0 (all the way) to 1 (not at all): the arithmetic of James and Stein as
 * told by B. Efron and C. Morris, Stein's paradox in statistics, Scientific American 236 (May 1977).
 */
export const shrunk = (value: number, toward: number, factor: number): number => toward + factor * (value - toward);
