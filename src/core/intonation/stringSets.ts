import { NYLON_SETS } from './nylonSets';
import { STEEL_SETS } from './steelSets';
import type { StringSet } from './stringSetTypes';
import { UKULELE_SETS } from './ukuleleSets';

/** Every generic string set, in the order in which they are offered. */
export const STRING_SETS: readonly StringSet[] = [...STEEL_SETS, ...NYLON_SETS, ...UKULELE_SETS];
