import type { Body } from '../document/bodyTypes';
import type { Point } from '../geom/types';
import { roundDecimal } from '../units/roundDecimal';
import type { BracingSet } from './bracingSets';

/** Places come to a tenth of a millimetre: a guess needs no more. */
const DECIMALS = 1;

/**
 * Braces, plate and soundhole of a set laid behind this octave line, stretched to this scale, all of them still to be found
 * on the instrument. Body frame, mm.
 */
export const bodyFromSet = (
  { braces, plate, soundhole, scaleLength }: BracingSet,
  octave: number,
  scale: number,
): Pick<Body, 'braces' | 'plate' | 'soundhole'> => {
  const size = (mm: number): number => roundDecimal((mm * scale) / scaleLength, DECIMALS);
  const along = (mm: number): number => roundDecimal(octave + (mm * scale) / scaleLength, DECIMALS);
  const place = ({ x, y }: Point): Point => ({ x: size(x), y: along(y) });
  return {
    braces: braces.map(({ from, to, ...brace }, index) => ({
      ...brace,
      id: `b${index + 1}`,
      from: place(from),
      to: place(to),
      height: null,
      read: false,
    })),
    plate: plate && {
      front: along(plate.front),
      aside: 0,
      along: size(plate.along),
      acrossFront: size(plate.acrossFront),
      acrossBack: size(plate.acrossBack),
      thickness: plate.thickness,
      read: false,
    },
    soundhole: { centre: along(soundhole.centre), across: size(soundhole.across), along: null },
  };
};
