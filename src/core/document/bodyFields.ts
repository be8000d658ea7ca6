import type { BodyDatum, BraceKind } from './bodyTypes';
import { choiceField, lengthField, orEmpty, textField } from './fieldRows';
import type { Field } from './fieldTypes';
import type { Project } from './types';

/** Braces that a body may have. */
export const MOST_BRACES = 40;

export const BRACE_KINDS: Readonly<Record<BraceKind, string>> = {
  'x-leg': 'X-leg',
  'tone-bar': 'tone bar',
  finger: 'finger brace',
  fan: 'fan brace',
  transverse: 'transverse brace',
};

export const BODY_DATUMS: Readonly<Record<BodyDatum, string>> = {
  octave: 'the octave line',
  front: 'the bridge’s front edge',
  nut: 'the nut',
};

const COMMON = 'common practice, no source';
const MEMORY = 'from memory';
const SIDES =
  'Plus, or the word treble, for the treble side; minus, or the word bass, for the bass side; left and right, as seen from the front, are understood too.';

const alongField = (path: string, label: string, help: string): Field => lengthField(path, label, 50, 1200, help);

const asideField = (path: string, label: string, what: string): Field =>
  lengthField(path, label, -300, 300, `${what} from the centreline. ${SIDES}`);

const braceFields = (index: number): readonly Field[] => {
  const at = (name: string): string => `body.braces.${index}.${name}`;
  const of = (what: string): string => `${what}, brace ${index + 1}`;
  const end = (name: 'from' | 'to', which: string): readonly Field[] => [
    alongField(
      at(`${name}.y`),
      of(`${which} point along`),
      'Where the middle of the brace was found, along the centreline: ahead of the bridge for one point, behind it for the other.',
    ),
    asideField(at(`${name}.x`), of(`${which} point to the side`), 'Middle of the brace'),
  ];
  return [
    textField(at('name'), of('Name'), 60, 'What you call this brace.'),
    choiceField(at('kind'), of('Kind'), 'What it does in the bracing.', Object.entries(BRACE_KINDS)),
    ...end('from', 'First'),
    ...end('to', 'Second'),
    lengthField(at('width'), of('Width'), 1, 40, 'Side to side, where it is glued to the top.', `5/16 in: ${MEMORY}`),
    orEmpty(lengthField(at('height'), of('Height'), 0.5, 40, 'Below the top, beside the bridge; empty if not read.')),
  ];
};

/** The bridge plate. */
export const PLATE_FIELDS: readonly Field[] = [
  alongField(
    'body.plate.front',
    'Plate, front edge along',
    'Where its edge toward the nut lies, along the centreline.',
  ),
  asideField('body.plate.aside', 'Plate, to the side', 'Its middle'),
  lengthField('body.plate.along', 'Plate, front to back', 5, 200, 'From its front edge to its back edge.', MEMORY),
  lengthField('body.plate.acrossFront', 'Plate, across its front', 10, 400, 'Width of its front edge.', MEMORY),
  lengthField(
    'body.plate.acrossBack',
    'Plate, across its back',
    10,
    400,
    'Width of its back edge; the same as the front for a rectangle.',
    MEMORY,
  ),
  lengthField(
    'body.plate.thickness',
    'Plate thickness',
    0.3,
    10,
    'As found with a gauge through a pin hole.',
    'maple, about 0.100 in: frets.com, new bridge plate',
  ),
];

export const SOUNDHOLE_FIELDS: readonly Field[] = [
  alongField('body.soundhole.centre', 'Soundhole, middle along', 'Middle of the soundhole, along the centreline.'),
  lengthField('body.soundhole.across', 'Soundhole, across', 20, 200, 'Edge to edge, across.', `4 in: ${MEMORY}`),
  orEmpty(
    lengthField(
      'body.soundhole.along',
      'Soundhole, along',
      20,
      200,
      'Edge to edge, along an oval one; empty if round.',
    ),
  ),
];

const CUTAWAY_FIELDS: readonly Field[] = [
  choiceField('body.cutaway.side', 'Cutaway side', 'Side of the body as it was built.', [
    ['treble', 'treble'],
    ['bass', 'bass'],
  ]),
  lengthField('body.cutaway.aside', 'Centreline to the cutaway', 10, 300, 'Where it comes in nearest.', COMMON),
  alongField('body.cutaway.end', 'Cutaway, back end along', 'Behind this the body is as wide as on its other side.'),
];

/** The hole that takes the wire of a pickup from under the saddle. */
export const WIRE_HOLE_FIELDS: readonly Field[] = [
  alongField('body.wireHole.at.y', 'Wire hole along', 'Its middle, along the centreline.'),
  asideField('body.wireHole.at.x', 'Wire hole to the side', 'Its middle'),
  lengthField('body.wireHole.diameter', 'Wire hole', 0.5, 12, 'Drill, through the slot and the top.', COMMON),
];

const DATUM_FIELD: Field = choiceField(
  'body.from',
  'Along is read from',
  'Changing it leaves everything where it is and tells the figures anew.',
  Object.entries(BODY_DATUMS),
);

/** How far the top reaches around the bridge. */
const SIZE_FIELDS: readonly Field[] = [
  orEmpty(
    lengthField(
      'body.across',
      'Body, across at the bridge',
      60,
      700,
      'Edge to edge of the top, where the bridge will lie. On a small body the template then shows where to trim its paper; empty if not measured.',
    ),
  ),
  orEmpty(
    lengthField(
      'body.tail',
      'Bridge front edge to the tail end',
      15,
      500,
      'Along the centreline, from where the front edge of the bridge will lie to the end of the top; empty if not measured.',
    ),
  ),
];

/** Every row of the field table about the body; none while nothing was said of it. */
export const bodyFields = ({ body }: Project): readonly Field[] =>
  body === null
    ? []
    : [
        DATUM_FIELD,
        ...SIZE_FIELDS,
        ...body.braces.flatMap((_, index) => braceFields(index)),
        ...(body.plate === null ? [] : PLATE_FIELDS),
        ...(body.soundhole === null ? [] : SOUNDHOLE_FIELDS),
        ...(body.cutaway === null ? [] : CUTAWAY_FIELDS),
        ...(body.wireHole === null ? [] : WIRE_HOLE_FIELDS),
      ];

const limit = (name: string, label: string, max: number, help: string): Field =>
  orEmpty(lengthField(`limits.${name}`, label, 0, max, help));

/** Limits of the checks beneath the bridge; an empty one is the usual. */
export const BODY_LIMIT_FIELDS: readonly Field[] = [
  limit('braceToPin', 'Pin hole to a brace, least', 20, 'Rim of the hole, as reamed, to the side of the brace.'),
  limit('braceToHole', 'Other hole to a brace, least', 20, 'Locating-pin or wire hole to the side of the brace.'),
  limit(
    'plateAroundPins',
    'Plate around a pin hole, least',
    20,
    'Rim of the hole, as reamed, to the edge of the plate.',
  ),
  limit(
    'caulThickness',
    'Thickness of the inside caul',
    80,
    'Caul with its grooves, as it goes through the soundhole.',
  ),
  limit(
    'caulAcross',
    'Inside caul beyond the bridge, to each side',
    40,
    'From the tip of the bridge to the end of the caul.',
  ),
  limit(
    'caulAlong',
    'Inside caul beyond the bridge, front and back',
    40,
    'From the foremost and hindmost of the bridge to the edge of the caul.',
  ),
  limit(
    'caulGroove',
    'Room in the grooves of the inside caul',
    10,
    'Beside and under each brace, and around the plate.',
  ),
];
