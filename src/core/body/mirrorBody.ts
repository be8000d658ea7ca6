import type { Cutaway } from '../document/bodyTypes';
import { mirrorPath } from '../geom/mirrorPath';
import type { Point } from '../geom/types';
import type { BodyPlace } from './types';

const mirrored = ({ x, y }: Point): Point => ({ x: 0 - x, y });

const otherSide = (cutaway: Cutaway): Cutaway => ({ ...cutaway, side: cutaway.side === 'treble' ? 'bass' : 'treble' });

/** The same body in the frame of the other hand: geometry changes side, names stay as the body's own. Its own inverse. */
export const mirrorBody = ({ braces, plate, soundhole, wireHole, cutaway }: BodyPlace): BodyPlace => ({
  braces: braces.map((brace) => ({ ...brace, from: mirrored(brace.from), to: mirrored(brace.to) })),
  plate: plate && mirrorPath(plate),
  soundhole: soundhole && mirrorPath(soundhole),
  wireHole: wireHole && { ...wireHole, centre: mirrored(wireHole.centre) },
  cutaway: cutaway && otherSide(cutaway),
});
