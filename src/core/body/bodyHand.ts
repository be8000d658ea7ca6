import type { Body } from '../document/bodyTypes';
import type { Hand } from '../document/types';

/** Which hand the body was built for. instrument: the hand that it is strung for. */
export const bodyHand = ({ hand }: Body, instrument: Hand): Hand => hand ?? instrument;

/** Whether the body was built for the other hand, so that its treble side lies under the bass strings. */
export const isConverted = (body: Body, instrument: Hand): boolean => bodyHand(body, instrument) !== instrument;
