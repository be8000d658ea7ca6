import { braceGap } from '../../body/braceGap';
import { reamed } from '../mouths';
import type { DesignCheck } from '../types';
import { checkPart } from '../wallCheck';
import type { Bodied } from './bodied';
import { bodyLimit } from './bodyLimits';
import { type BraceGap, nearestBrace } from './nearestBrace';

/** Rounding that no wood shows, mm. */
const SAME_MM = 1e-6;

const FIND = 'Find the brace from inside before drilling.';

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

interface Words {
  readonly id: string;
  readonly name: string;
  /** Why the limit is wanted; {1} is the limit. */
  readonly wants: string;
  /** Said when the hole runs into the brace. */
  readonly through: string;
}

const braceCheck = (
  { id, name, wants, through }: Words,
  { hole, brace, wall, at }: BraceGap,
  limitName: 'braceToPin' | 'braceToHole',
  own: Bodied['limits'],
  also: readonly number[] = [],
): DesignCheck => {
  const limit = bodyLimit(limitName, own);
  const about = {
    id,
    lengths: [Math.abs(wall), limit.value, ...also],
    source: limit.source,
    at,
    part: checkPart(name),
    limit: `limits.${limitName}`,
  };
  const label = capital(hole.label);
  if (wall < -SAME_MM)
    return { ...about, verdict: 'wrong', message: `${label} runs {0} into ${brace.name}.${through}` };
  if (wall < limit.value - SAME_MM)
    return { ...about, verdict: 'look', message: `${label} comes within {0} of ${brace.name}; ${wants} ${FIND}` };
  return { ...about, verdict: 'good', message: `${name} by {0}: the nearest is ${brace.name}.` };
};

/** What is left of the nearest pin hole before it is reamed. */
const pilotWords = (gap: number): string =>
  gap >= 0 ? ' The pilot hole clears it by {2}.' : ' So does the pilot hole, by {2}.';

/** Pin holes, locating-pin holes and the wire hole against the braces; nothing of what is not there. */
export const holesAndBraces = ({ place, design, bridge, limits }: Bodied): readonly DesignCheck[] => {
  const { braces, wireHole } = place;
  const { pins, locating } = design;
  const found: DesignCheck[] = [];
  const pin = pins === null ? null : nearestBrace(braces, reamed(pins, bridge.pins));
  if (pin !== null && pins !== null) {
    const pilot = braceGap(pin.brace, pin.hole.centre, pins.hole);
    const words: Words = {
      id: 'brace-pins',
      name: 'Pin holes clear the braces',
      wants: 'the ball end wants {1}.',
      through: pilotWords(pilot),
    };
    found.push(braceCheck(words, pin, 'braceToPin', limits, [Math.abs(pilot)]));
  }
  const pinned = locating.site === 'outer-pin-holes' ? null : nearestBrace(braces, bridge.locating);
  if (pinned !== null) {
    const words: Words = {
      id: 'brace-locating',
      name: 'Locating pins clear the braces',
      wants: '{1} is usual.',
      through: ' Put the locating pins elsewhere, or stop the hole in the top.',
    };
    found.push(braceCheck(words, pinned, 'braceToHole', limits));
  }
  const wire = wireHole === null ? null : nearestBrace(braces, [wireHole]);
  if (wire !== null) {
    const words: Words = {
      id: 'brace-wire',
      name: 'The wire hole clears the braces',
      wants: '{1} is usual.',
      through: ' The wire would have to come out beside it.',
    };
    found.push(braceCheck(words, wire, 'braceToHole', limits));
  }
  return found;
};
