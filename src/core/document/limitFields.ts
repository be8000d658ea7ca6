import { lengthField, numberField, orEmpty } from './fieldRows';
import type { Field, NumberField } from './fieldTypes';

const share = (row: NumberField): NumberField => ({ ...row, scale: 100 });
const path = (name: string): string => `limits.${name}`;

/** Limits that the maker can set; an empty one is the usual, which stands in its place with its source. */
export const LIMIT_FIELDS: readonly Field[] = [
  lengthField(
    path('airspaceLeast'),
    'Straightedge over the bridge, least',
    -10,
    10,
    'Below this the neck stands too low for the bridge.',
  ),
  lengthField(
    path('airspaceMost'),
    'Straightedge over the bridge, most',
    -10,
    10,
    'Above this the bridge is too low for the neck.',
  ),
  lengthField(path('proudLeast'), 'Saddle proud of the bridge, least', 0, 15, 'Saddle above the top of the bridge.'),
  lengthField(path('proudMost'), 'Saddle proud of the bridge, most', 0, 15, 'Saddle above the top of the bridge.'),
  lengthField(path('thicknessLeast'), 'Bridge thickness, least', 2, 20, 'At the slot.'),
  lengthField(path('thicknessMost'), 'Bridge thickness, most', 2, 20, 'At the slot.'),
  lengthField(path('woodUnder'), 'Wood under the slot, least', 0, 10, 'Floor of the slot to the sole.'),
  share(
    numberField(
      path('share'),
      'Saddle in the slot, least',
      '%',
      0,
      1,
      'Share of the saddle\u2019s height that stands in the slot.',
    ),
  ),
  share(
    numberField(
      path('shareAim'),
      'Saddle in the slot, aimed at',
      '%',
      0,
      1,
      'Share of the saddle\u2019s height that stands in the slot.',
    ),
  ),
  numberField(path('breakDeg'), 'Break angle, least', '\u00b0', 0, 45, 'Of the string behind the saddle.'),
  numberField(path('leaveCents'), 'Error that no one would cut for', 'cents', 0, 20, 'At the 12th fret.'),
  numberField(
    path('centsAgree'),
    'Cents read against the rule',
    'cents',
    0,
    20,
    'How far the tuner and the rule may differ.',
  ),
  lengthField(path('land'), 'Land beside the break point', 0, 2, 'Saddle kept ahead of and behind the break point.'),
  lengthField(path('recutMost'), 'Farthest a slot is recut', 0, 15, 'Beyond this the bridge is moved instead.'),
  lengthField(
    path('wallAroundSlot'),
    'Wood around the slot, least',
    0,
    10,
    'Between the slot and the edge of the bridge.',
  ),
  lengthField(
    path('wallAroundPins'),
    'Wood around a pin hole, least',
    0,
    10,
    'Between a pin hole and the slot or the edge of the bridge.',
  ),
  lengthField(
    path('rim'),
    'Finish left under the rim, look from',
    0,
    10,
    'From this width on the design checks ask for a look.',
  ),
  lengthField(path('pinAside'), 'Pin beside its string, most', 0, 10, 'To the side; string holes of a tie block too.'),
  lengthField(path('pinAsideTwoRows'), 'Pin of two rows beside its string, most', 0, 10, 'To the side.'),
  lengthField(path('wallBetweenHoles'), 'Wood between two holes, least', 0, 10, 'Pin holes as they are reamed.'),
  lengthField(
    path('wallAroundLocating'),
    'Wood around a locating pin, least',
    0,
    10,
    'Between a locating-pin hole that is not in the slot and the slot or the edge of the bridge.',
  ),
  lengthField(
    path('wallAroundTies'),
    'Wood above and below a string hole, least',
    0,
    10,
    'Of a tie block or back edge.',
  ),
  lengthField(
    path('stringPastHole'),
    'String past the hole of another pin, least',
    0,
    5,
    'From the string to the rim.',
  ),
  lengthField(
    path('symmetry'),
    'Sides of a symmetric outline, most apart',
    0,
    5,
    'How far one side may differ from the mirror image of the other.',
  ),
  lengthField(
    path('holeOff'),
    'Old hole off its pin, most',
    0,
    5,
    'Beyond this an old hole is plugged and drilled again.',
  ),
  numberField(
    path('showing'),
    'Old footprint showing, look from',
    'mm²',
    0,
    10_000,
    'Above this the design checks ask for a look.',
  ),
].map(orEmpty);
