import type { Compensation } from '../document/types';
import type { KindRow } from './kindRow';

const STEEL_RULE: Compensation['rule'] = {
  treble: 1.5875,
  bass: 3.96875,
  reach: 'break-point',
  source: '1/16 in treble, 5/32 in bass: larryeubanks.blogspot.com, June 2010',
};

/** What steel-string guitars start from; dimensions from memory where no field names a source. */
export const STEEL = {
  shape: 'belly',
  boardRadius: 406.4,
  margin: 3.2,
  action: { treble: 1.9, bass: 2.5 },
  nutHeight: { treble: 0.3, bass: 0.4 },
  relief: 0.15,
  rule: STEEL_RULE,
  height: { kind: 'steel', run: 11.1 },
  thickness: 9.525,
  slotDepth: 6.5,
  pins: { from: 9.525, stagger: 0 },
} as const;

/** The six-string steel guitar. */
export const STEEL_STRING: KindRow = {
  ...STEEL,
  id: 'steel-string',
  name: 'Steel-string guitar',
  stringSet: 'steel-12-53',
  scaleLength: 645,
  frets: { count: 20, bodyJoin: 14 },
  widths: { nut: 44.45, twelfth: 55.5 },
  spread: 54,
};
