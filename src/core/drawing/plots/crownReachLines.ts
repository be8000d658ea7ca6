/**
 * How far ahead of and behind the straight saddle line its crown can be shaped, along the centreline, mm: the land is kept
 * at both faces. ahead is − toward the nut. A saddle thinner than two lands can break only in its middle.
 *
 * @param crown where the straight line lies in the thickness: 0 front face, 1 back face
 * @param slope dy/dx of the line
 */
export const crownReachLines = (
  { width, crown }: { readonly width: number; readonly crown: number },
  slope: number,
  land: number,
): { readonly ahead: number; readonly behind: number } => {
  const stretch = Math.hypot(1, slope);
  return {
    ahead: (Math.min(land, width / 2) - crown * width) * stretch,
    behind: (Math.max(width - land, width / 2) - crown * width) * stretch,
  };
};
