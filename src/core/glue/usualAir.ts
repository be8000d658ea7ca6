import type { Air } from '../document/buildTypes';

/** Air of a workshop while nothing was read: 70 °F and the middle of 40 to 50 %. */
export const USUAL_AIR: Air = { celsius: 21.1, humidity: 45 };

export const AIR_SOURCE = 'shops are kept at 40 to 50 % and about 70 °F: a guitar maker’s manual at manualshelf.com';
