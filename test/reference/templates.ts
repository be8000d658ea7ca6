import { CLASSICAL_TEMPLATES } from './templates-classical';
import type { ExpectedTemplate } from './templates-expected';
import { STEEL_TEMPLATES } from './templates-steel';
import { UKULELE_TEMPLATES } from './templates-ukulele';

/**
 * The templates of three instruments of our own invention, worked by hand: straight-line and circle geometry from what
 * the instruments' files say, with a pocket calculator's functions, apart from this program.
 *
 * Laid on the page by the rules of the sheet: margins of 10; a strip of 10 more at the left and of 20 more at the foot;
 * the drawing in the middle of the room that is left, its top 27 ahead of the square line, so that the square line lies
 * at y = 10 + 27 = 37; the square in the lower left corner of the room, or at the upper left of its own page; the long
 * lines of whole 20 mm or whole inches, one across from the left of the room 10.4 below it, one along from its top at
 * x = 14.6. The square line stands at the last whole 10 mm, or half inch, that is 15 or more ahead of the bridge.
 *
 * So x = middle of the room ± (distance from the centreline), + toward the treble of a right-handed instrument and − of
 * a left-handed one, and y = (distance from the nut datum) − (square line from the nut datum) + 37.
 */
export const TEMPLATES: readonly ExpectedTemplate[] = [
  ...STEEL_TEMPLATES,
  ...CLASSICAL_TEMPLATES,
  ...UKULELE_TEMPLATES,
];
