import type { FreedomAnswer, PlaceAnswer } from '../../../core/placement/reading/answerTypes';
import { formatLength, type LengthStyle } from '../../../core/units/formatLength';
import { showLength } from '../../../core/units/showLength';
import { fine } from './fine';

export const FREEDOM_NAME = { x: 'Sideways', y: 'Fore and aft', angle: 'Turned' } as const;

export const FREEDOM_VERDICT = {
  good: 'good',
  off: 'move it',
  unsure: 'cannot tell yet',
  unseen: 'not read',
} as const;

/** Which way a freedom is off. */
export const sideOf = ({ freedom, off }: FreedomAnswer): string => {
  switch (freedom) {
    case 'x':
      return off > 0 ? 'too far to the treble' : 'too far to the bass';
    case 'y':
      return off > 0 ? 'too far toward the tail' : 'too far toward the nut';
    case 'angle':
      return off > 0 ? 'treble wing toward the tail' : 'treble wing toward the nut';
  }
};

/** The answer in a few words. */
export const answerHeading = ({ verdict, steps, quarrel }: PlaceAnswer): string => {
  if (quarrel.ids.length === 1) return 'One reading does not go with the rest';
  if (quarrel.ids.length > 1) return 'These readings quarrel: one of them is off';
  if (quarrel.together) return 'These readings do not go together';
  switch (verdict) {
    case 'good':
      return 'It sits well: leave it';
    case 'off':
      return 'Move it';
    case 'unsure':
      return steps.length === 0 ? 'Too uncertain to tell: read finer' : 'Perhaps a little off: read more first';
    case 'unseen':
      return 'Not all of it is read yet';
  }
};

/** A turn, without its sign: "0.30°". */
export const degrees = (radians: number): string => `${((Math.abs(radians) * 180) / Math.PI).toFixed(2)}°`;

/** A move of the hand: in fractions of an inch never coarser than 64ths. */
export const moveLength = (mm: number, style: LengthStyle): string =>
  'denominator' in style ? `${formatLength(mm, { unit: 'in', denominator: 64 })}″` : showLength(mm, style);

/** How much a freedom is off, or how well that is known, without a sign. */
export const amountOf = (freedom: FreedomAnswer['freedom'], amount: number, style: LengthStyle): string =>
  freedom === 'angle' ? degrees(amount) : fine(Math.abs(amount), style);
