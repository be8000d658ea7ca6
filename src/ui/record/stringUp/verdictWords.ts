import type { CrownMove } from '../../../core/learning/crownMoves';
import type { SaddleVerdict } from '../../../core/learning/saddleVerdict';

type Show = (mm: number) => string;

/** What a string-up comes to, in one sentence. */
export const saddleVerdictWords = ({ verdict }: Pick<SaddleVerdict, 'verdict'>): string => {
  switch (verdict) {
    case 'leave':
      return 'Leave the saddle: no string that was read is off by enough to file for.';
    case 'shape':
      return 'File the crown: this saddle serves every string that was read.';
    case 'recut':
      return 'The crown cannot take it all: this saddle is too thin or its slot out of place.';
    case 'move':
      return 'Neither the crown nor a slot cut anew will do: the bridge stands too far off.';
  }
};

const way = (mm: number): string => (mm < 0 ? 'toward the nut' : 'away from the nut');

/** What to do where the crown comes short; nothing while it does not. */
export const beyondWords = ({ beyond, verdict }: SaddleVerdict, lastString: number, show: Show): readonly string[] => {
  if (beyond === null) return [];
  const { widen, recut } = beyond;
  const sides = [
    ...(widen.ahead > 0 ? [`${show(widen.ahead)} at its front`] : []),
    ...(widen.behind > 0 ? [`${show(widen.behind)} at its back`] : []),
  ].join(' and ');
  const moved = `${show(Math.abs(recut.treble))} ${way(recut.treble)} at string 1 and ${show(Math.abs(recut.bass))} ${way(recut.bass)} at string ${lastString}`;
  return [
    `Another saddle: widen the slot by ${sides} for a saddle ${show(widen.thickness)} thick.`,
    verdict === 'move'
      ? `A slot cut anew would have its middle ${moved}: farther than is wise in this bridge.`
      : `Or fill the slot and cut it anew: its middle moves ${moved}; a saddle of ${show(recut.thickness)} or more then serves every string.`,
  ];
};

/** What to file at one string, in a sentence; null where its break point stays as it is shown. */
export const moveWords = (move: CrownMove, place: number, show: Show): string | null => {
  const { name, from, to, reached, leftCents } = move;
  const shown = show(Math.abs(to - from));
  const still = !/[1-9]/.test(shown);
  const who = `String ${place} (${name})`;
  const left = `${Math.abs(leftCents).toFixed(1)} cents ${leftCents < 0 ? 'flat' : 'sharp'}`;
  const short = reached ? '' : ` The saddle ends there: the string stays ${left}.`;
  if (still) return reached ? null : `${who} breaks as far out as the crown goes.${short}`;
  const [toward, side] = to > from ? ['back', 'front'] : ['to the front', 'back'];
  return `${who}: ${shown} ${toward}, to ${show(to)} from the front face. File the ${side} of the crown.${short}`;
};
