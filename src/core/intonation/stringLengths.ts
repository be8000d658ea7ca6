/** Straight distance, mm: plain square root, which is several times faster than Math.hypot and safe at these sizes. */
export const straight = (along: number, up: number): number => Math.sqrt(along * along + up * up);

/** Steepest that a finger presses a string down behind a fret, so that push-down fades as the finger nears it (no source). */
const STEEPEST = 0.2;

/**
 * Length of the fretted string behind its fret, mm: from the fret top, past the finger, to the nut.
 *
 * Without push-down the string carries on at the slope of its sounding part as far as the finger, then runs straight to
 * the nut. With it the string goes down to the finger (never less than that slope gives), then straight to the nut, or
 * over the top of the fret before where the straight way would pass below it.
 * @param along fret to nut, mm
 * @param up nut above the fret top, mm
 * @param slope of the sounding part, + when it falls toward the nut
 * @param finger distance of the finger behind the fret, mm, 0 or more
 * @param pushDown finger depth below the fret top, mm, 0 or more, counted up to a fifth of the distance
 * @param gap to the fret before, mm
 * @param step top of the fret before above this fret's top, mm
 */
export function lengthBehind(
  along: number,
  up: number,
  slope: number,
  finger: number,
  pushDown: number,
  gap: number,
  step: number,
): number {
  if (finger === 0) return straight(along, up);
  const depth = Math.max(slope * finger, Math.min(pushDown, STEEPEST * finger));
  const atFretBefore = ((up + depth) * (gap - finger)) / (along - finger) - depth;
  return pushDown > 0 && atFretBefore < step
    ? straight(finger, depth) + straight(gap - finger, step + depth) + straight(along - gap, up - step)
    : straight(finger, depth) + straight(along - finger, up + depth);
}
