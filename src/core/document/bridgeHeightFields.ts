import { lengthField, orEmpty } from './fieldRows';
import type { Field } from './fieldTypes';

/** What decides first whether the bridge suits the neck. */
export const BRIDGE_HEIGHT_FIELDS: readonly Field[] = [
  orEmpty(
    lengthField(
      'height.straightedge',
      'Straightedge to bridge top',
      -10,
      10,
      'A straightedge along the middle of the board on the frets, carried on to the saddle: plus when it passes above the top of the bridge, minus when it would lie below it.',
    ),
  ),
  lengthField(
    'bridge.thickness',
    'Bridge thickness',
    3,
    16,
    'Sole to top at the slot.',
    '3/8 in: buildyourguitar.com, bridge angle tip',
  ),
  lengthField('bridge.slot.depth', 'Slot depth', 0.5, 14, 'Top of the bridge to the floor of the slot.'),
];
