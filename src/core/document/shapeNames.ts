import type { ShapeName } from './types';

/** What makers call each shape, in the order in which they are offered. */
export const SHAPE_NAMES: Readonly<Record<ShapeName, string>> = {
  rectangular: 'Rectangular',
  belly: 'Belly, toward the tail',
  'belly-nut': 'Belly, toward the nut',
  'pyramid-tip': 'Pyramid-tip',
  'tie-block': 'Tie-block',
  'small-ukulele': 'Small ukulele',
  'double-sided': 'Double-sided, ornate',
};
