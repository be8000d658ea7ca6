/**
 * What a footprint with sloped sides loses over all when its sole is sanded, mm: 2·t·tan(draft), a side t·tan(draft).
 * Elementary geometry.
 * @param thickness taken off the sole, mm, at least 0
 * @param draft lean of the sides, radians from upright, 0 to below a right angle
 * @throws RangeError outside that
 */
export const sandingShrink = (thickness: number, draft: number): number => {
  if (!(thickness >= 0) || !Number.isFinite(thickness))
    throw new RangeError(`Expected a thickness of 0 mm or more, got ${thickness}.`);
  if (!(draft >= 0 && draft < Math.PI / 2)) throw new RangeError(`Expected a slope below a right angle, got ${draft}.`);
  return 2 * thickness * Math.tan(draft);
};
