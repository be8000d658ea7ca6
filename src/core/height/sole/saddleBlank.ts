import { fail, ok, type Result } from '../../result';
import { sagitta } from '../sagitta';
import type { SaddleHeight } from '../types';
import { type ArcOver, arcOver } from './arcOver';

/** What a saddle is made for, mm. */
export interface SaddleBlankNeeds {
  /** Each string at the saddle, the treble first, and where it crosses it: x from the centreline, + toward the treble. */
  readonly strings: readonly (Pick<SaddleHeight, 'proud'> & {
    readonly id: string;
    readonly name: string;
    readonly x: number;
  })[];
  /** The slot: over all along itself, wall to wall, top of the bridge to floor; dy/dx of its line. */
  readonly slot: { readonly length: number; readonly width: number; readonly depth: number; readonly slope: number };
  readonly pickup: number;
  /** Of the bridge's upper face; null for flat. */
  readonly face: number | null;
  /** How much shorter and thinner than its slot the saddle is made. */
  readonly play: number;
  readonly clearance: number;
}

/** A string over the saddle, mm. */
export interface BlankString {
  readonly id: string;
  readonly name: string;
  /** Along the saddle from its middle, + toward the treble. */
  readonly at: number;
  /** Top of the saddle above its own foot, above the slot's floor (a pickup lies between), and above the bridge's face. */
  readonly height: number;
  readonly aboveFloor: number;
  readonly aboveBridge: number;
}

/** The profile of a saddle with a flat foot, mm: its place along the slot from the middle, + toward the treble. */
export interface SaddleBlank {
  readonly length: number;
  readonly thickness: number;
  readonly strings: readonly BlankString[];
  /** Height at the highest place of its top, and at the bass and treble ends. */
  readonly highest: number;
  readonly bassEnd: number;
  readonly trebleEnd: number;
  /** One arc through the outer strings, and how far off it leaves the inner ones. */
  readonly top: ArcOver;
  /** Where the face of the bridge comes on the saddle, above its foot, on the centreline. */
  readonly face: number;
}

/** Places along the top that are looked at for the highest. */
const LOOKS = 200;

/**
 * The saddle to make: length and thickness from the slot less play, heights from the slot's floor to where every string
 * wants it, and the one radius that fits them best. All mm.
 *
 * Codes: blank.play (the play leaves nothing), blank.strings (fewer than two, or beyond the saddle's ends), blank.low
 * (a string wants it below its own foot).
 */
export const saddleBlank = (needs: SaddleBlankNeeds): Result<SaddleBlank> => {
  const { strings, slot, pickup, face, play, clearance } = needs;
  const length = slot.length - play;
  const thickness = slot.width - clearance;
  if (!(length > 0 && thickness > 0))
    return fail('limits', 'blank.play', 'The play takes all of the saddle: expected less than the slot itself.');
  const stretch = Math.hypot(1, slot.slope);
  const seat = slot.depth - pickup;
  const over = strings.map(({ id, name, x, proud }) => ({
    id,
    name,
    at: x * stretch,
    height: seat + proud,
    aboveFloor: slot.depth + proud,
    aboveBridge: proud + sagitta(face, x),
  }));
  if (over.length < 2 || over.some(({ at }) => Math.abs(at) > length / 2))
    return fail(
      'bridge.slot.length',
      'blank.strings',
      'The saddle is too short: its slot ends before the outer strings.',
    );
  if (over.some(({ height }) => height <= 0))
    return fail('bridge.slot.depth', 'blank.low', 'The strings would lie below the foot of the saddle.');
  const top = arcOver([...over].reverse().map(({ at, height }) => ({ x: at, y: height })));
  const looks = Array.from({ length: LOOKS + 1 }, (_, index) => top.at((index / LOOKS - 0.5) * length));
  return ok({
    length,
    thickness,
    strings: over,
    highest: Math.max(...looks, ...over.map(({ height }) => height)),
    bassEnd: top.at(-length / 2),
    trebleEnd: top.at(length / 2),
    top,
    face: seat,
  });
};
