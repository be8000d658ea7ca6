import { choiceField, lengthField, numberField, orEmpty } from './fieldRows';
import type { Field } from './fieldTypes';
import type { SoleGaps } from './soleTypes';

/** Radii that a top, a sole or a bridge may have, mm: rounder than the first is no guitar, flatter than the last is flat. */
const ROUNDEST = 250;
const FLATTEST = 50_000;

const radiusField = (path: string, label: string, help: string, source?: string): Field =>
  orEmpty(
    lengthField(path, label, ROUNDEST, FLATTEST, `${help} Empty for flat; feet such as 28 ft are understood.`, source),
  );

const DOME =
  '28 ft in one kit; 30 ft: larryeubanks.blogspot.com, May 2010, and pegasusguitars.com, shaping bridge soles';
const MEMORY = 'from memory: 1/8 to 3/16 in on a steel-string, 3 to 4 mm on a classical';
const COMMON = 'common practice, no source';

const gapField = (name: keyof SoleGaps, where: string): Field =>
  lengthField(
    `bridge.sole.top.gaps.${name}`,
    `Gap read at the ${where}`,
    0,
    5,
    'Feeler gauge between the top and the sole laid on it, on the middle of the bridge’s width; 0 where it touches.',
  );

/** The sole, the wings and the top beneath; only in a project where something was said of them. */
export const SOLE_FIELDS: readonly Field[] = [
  lengthField('bridge.sole.wing.tip', 'Wing thickness at the tips', 0.5, 16, 'Sole to upper face at the tips.', MEMORY),
  lengthField(
    'bridge.sole.wing.inner',
    'Wing thickness where it begins',
    0.5,
    16,
    'Sole to upper face at the inner end of a wing; as thick as the bridge where it runs on from it without a step.',
    COMMON,
  ),
  lengthField(
    'bridge.sole.wing.begin',
    'Centreline to the wings',
    5,
    150,
    'Centreline to where the wings begin, either side.',
    COMMON,
  ),
  radiusField('bridge.sole.face', 'Radius of the bridge’s upper face', 'Along the length of the bridge.', COMMON),
  {
    ...numberField(
      'bridge.sole.draft',
      'Slope of the sides',
      '°',
      0,
      Math.PI / 4,
      'How far the sides lean in from the sole upward: 0 for upright sides. Sanding the sole of a bridge with sloped sides makes its footprint smaller.',
      COMMON,
    ),
    scale: 180 / Math.PI,
  },
  lengthField(
    'bridge.sole.sanding',
    'To sand off the sole, all over',
    0,
    10,
    'Beside what fits the sole to the top, as when the bridge is too thick.',
  ),
  radiusField('bridge.sole.across', 'Hollow of the sole, along its length', 'Radius that the sole was sanded to.'),
  radiusField('bridge.sole.along', 'Hollow of the sole, across it', 'Radius that the sole was sanded to.'),
  choiceField('bridge.sole.top.from', 'The top under the bridge', 'How its shape is known.', [
    ['radius', 'by the radius of its dome'],
    ['gaps', 'as read with feeler gauges'],
  ]),
  radiusField(
    'bridge.sole.top.across',
    'Dome of the top, across the instrument',
    'Radius of the dome along the length of the bridge.',
    DOME,
  ),
  radiusField('bridge.sole.top.along', 'Dome of the top, along the strings', 'Radius of the dome.', DOME),
  gapField('bassTip', 'bass tip'),
  gapField('bassWing', 'bass wing'),
  gapField('centre', 'centre'),
  gapField('trebleWing', 'treble wing'),
  gapField('trebleTip', 'treble tip'),
  radiusField(
    'bridge.sole.top.under',
    'Hollow of the sole that was gauged',
    'Radius of the old or trial sole that the gaps were read under.',
  ),
];

/** Limits on the fit of sole and saddle; an empty one is the usual. */
export const SOLE_LIMIT_FIELDS: readonly Field[] = [
  lengthField('limits.wingGap', 'Gap under the wings, most', 0, 2, 'Beyond this the wings must be forced down.'),
  lengthField('limits.centreGap', 'Gap under the centre, most', 0, 2, 'A hair here is better than a gap at the wings.'),
  lengthField('limits.saddlePlay', 'Saddle shorter than its slot', 0, 3, 'Play in all, both ends together.'),
  lengthField('limits.saddleClearance', 'Saddle thinner than its slot', 0, 1, 'Play in all, front and back together.'),
].map(orEmpty);
