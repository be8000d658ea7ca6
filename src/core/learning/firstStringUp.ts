import type { StringUp } from '../document/buildTypes';
import { fretsRead } from './readingsOf';

/** The earliest string-up at a first setting of which cents were read; null when there is none. */
export const firstStringUp = (stringUps: readonly StringUp[]): StringUp | null =>
  stringUps
    .filter((each) => each.stage === 'first' && each.crown !== 'filed' && fretsRead(each).length > 0)
    .reduce<StringUp | null>((first, each) => (first === null || each.at < first.at ? each : first), null);
