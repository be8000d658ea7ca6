import { bodyHand, isConverted } from '../../body/bodyHand';
import { braceName } from '../../body/bodyPlace';
import type { Body } from '../../document/bodyTypes';
import type { DesignCheck } from '../types';
import type { Bodied } from './bodied';

/** A brace nearer to the centreline than this, mm, is on neither side. */
const MIDDLE = 3;

const handed = (hand: string): string => `${hand}-handed`;

/** Braces that are called after one side and lie on the other, body frame. */
const misnamed = ({ braces }: Body): readonly string[] =>
  braces.flatMap((brace, index) => {
    const name = braceName(brace, index);
    const treble = /\btreble\b/i.test(name);
    const bass = /\bbass\b/i.test(name);
    const x = (brace.from.x + brace.to.x) / 2;
    return treble !== bass && Math.abs(x) > MIDDLE && treble !== x > 0 ? [name] : [];
  });

/** Whether body, braces and strings are all told for the hand that they are for. */
export const handCheck = ({ body, hand }: Bodied): DesignCheck => {
  const about = { id: 'hand', lengths: [], source: null };
  const built = bodyHand(body, hand);
  const names = misnamed(body);
  if (names.length > 0)
    return {
      ...about,
      verdict: 'wrong',
      message: `${names.length > 3 ? `${names.length} braces` : names.join(', ')}: on the other side of the centreline than the name says. Entered for the other hand? “Swap bass and treble” puts all of it right.`,
    };
  if (body.cutaway?.side === 'bass')
    return {
      ...about,
      verdict: 'look',
      message: `The cutaway is on the bass side of a body built ${handed(built)}. Cutaways are on the treble side: was the body built for the other hand?`,
    };
  if (isConverted(body, hand))
    return {
      ...about,
      verdict: 'look',
      message: `Converted: the body was built ${handed(built)} and is strung ${handed(hand)}. Braces, plate and soundhole stay as they were built, so that their treble side lies under the bass strings; slot and pins are the other way round.`,
    };
  return { ...about, verdict: 'good', message: `Strings, bridge and body are all ${handed(hand)}.` };
};
