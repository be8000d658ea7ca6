import type { InstrumentString } from '../../../document/types';
import type { StringPlace } from '../../../instrument/types';

/** A string on the spacing rule, mm; places from the centreline, + toward the treble. */
export interface SpacingString {
  readonly name: string;
  readonly diameter: number;
  /** Centre at the nut, square to the centreline, and how far that lies from the treble end of the nut. */
  readonly nut: number;
  readonly fromEnd: number;
  /** Centre along the saddle, and how far that lies from string 1. */
  readonly saddle: number;
  readonly fromFirst: number;
}

/** Strings at the nut and along a saddle of this slope, string 1 first. half: of the nut's width. */
export const spacingStrings = (
  strings: readonly InstrumentString[],
  places: readonly StringPlace[],
  half: number,
  slope: number,
): readonly SpacingString[] => {
  const stretch = Math.hypot(1, slope);
  const first = (places[0]?.saddleX ?? 0) * stretch;
  return places.map(({ name, nutX, saddleX }, index) => ({
    name,
    diameter: strings[index]?.diameter ?? 0,
    nut: nutX,
    fromEnd: half - nutX,
    saddle: saddleX * stretch,
    fromFirst: first - saddleX * stretch,
  }));
};
