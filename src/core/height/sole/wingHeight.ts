import type { Sole } from '../../document/soleTypes';

/** Height of a wing's upper face over its sole at x, straight from where the wing begins to its tip at `tipAt`. All mm. */
export const wingHeight = ({ wing: { begin, inner, tip } }: Pick<Sole, 'wing'>, tipAt: number, x: number): number =>
  inner + ((tip - inner) * (Math.abs(x) - begin)) / (Math.abs(tipAt) - begin);
