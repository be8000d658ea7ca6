import * as v from 'valibot';
import {
  DEFAULT_AUDIT,
  DEFAULT_CLEARANCE,
  DEFAULT_DENSITY,
  DEFAULT_FIT,
  DEFAULT_HEIGHT,
  DEFAULT_RIM,
  DEFAULT_SETUP,
  DEFAULT_SHEETS,
  DEFAULT_TAPER,
  DEFAULT_UNDER_HEAD,
} from '../core/document/defaultGroups';
import { MOST_DIMENSIONS } from '../core/document/mostDimensions';
import { MOST_PICTURES } from '../core/document/mostOfBuild';
import { MOST_READINGS } from '../core/document/readingFields';
import { SHAPE_NAMES } from '../core/document/shapeNames';
import { FEWEST_STRINGS, MOST_STRINGS } from '../core/document/stringCount';
import { STRING_UP_LIMITS } from '../core/document/stringUpLimits';
import type { Project, ShapeName } from '../core/document/types';
import { BODY_SCHEMA } from './bodySchema';
import { BUILD_SCHEMA } from './buildSchema';
import { DIMENSION_SCHEMA } from './dimensionSchema';
import { DRAWN_SCHEMA, POINT_SCHEMA } from './pathSchema';
import { REPAIR_SCHEMA } from './repairSchema';
import { SOLE_SCHEMA } from './soleSchema';

const [LEAST, MOST] = STRING_UP_LIMITS.learned;

/** Sheets that a project may ask for. */
const MOST_SHEETS = 40;

const length = v.pipe(v.number(), v.finite());
const name = v.pipe(v.string(), v.maxLength(200));
const text = v.pipe(v.string(), v.maxLength(20_000));
const trebleBass = { treble: length, bass: length };
const SHAPES = Object.keys(SHAPE_NAMES) as ShapeName[];
const figures = v.record(v.pipe(v.string(), v.maxLength(40)), length);

/** A length that may not have been read; absent in older files. */
const orNull = v.optional(v.nullable(length), null);

const elastic = v.variant('kind', [
  v.strictObject({
    kind: v.literal('core'),
    coreDiameter: length,
    coreShape: v.picklist(['round', 'hex']),
    modulus: length,
  }),
  v.strictObject({
    kind: v.literal('measured'),
    kappa: length,
    b0: length,
    at: v.exactOptional(v.strictObject({ scaleLength: length, frequency: length })),
  }),
]);

/**
 * The shape of a saved project, in the order in which a file is written. What each value may be is judged by the field
 * table afterwards; a key that is not here comes from a newer Saddlemark.
 */
export const PROJECT_SCHEMA = v.strictObject({
  format: v.literal('saddlemark-project'),
  version: v.literal(1),
  id: name,
  revision: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  about: v.strictObject({
    name,
    notes: text,
    created: v.pipe(v.string(), v.isoTimestamp()),
    changed: v.pipe(v.string(), v.isoTimestamp()),
    parent: v.optional(
      v.nullable(v.strictObject({ id: name, revision: v.pipe(v.number(), v.safeInteger(), v.minValue(0)) })),
      null,
    ),
    pictures: v.optional(v.pipe(v.array(name), v.maxLength(MOST_PICTURES)), []),
  }),
  instrument: v.strictObject({
    hand: v.picklist(['right', 'left']),
    frets: v.strictObject({ count: v.optional(length, 20), bodyJoin: length }),
    widths: v.strictObject({ nut: length, twelfth: length, last: orNull }),
    boardRadius: orNull,
    nut: v.strictObject({ datum: v.picklist(['front', 'zero-fret', 'board-end']), offset: length, face: length }),
    scale: v.strictObject({
      from: v.picklist(['entered', 'readings']),
      entered: length,
      readings: v.pipe(
        v.array(
          v.strictObject({ fret: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(36)), value: length }),
        ),
        v.maxLength(MOST_READINGS),
      ),
    }),
    margins: v.strictObject(trebleBass),
    gapRule: v.picklist(['equal-gaps', 'equal-centres']),
    pairGap: v.optional(length, 2),
    spread: v.strictObject({ from: v.picklist(['edges', 'own']), own: length }),
    seamOffset: v.optional(length, 0),
  }),
  strings: v.pipe(
    v.array(
      v.strictObject({
        id: v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{1,40}$/)),
        course: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(12)),
        name,
        frequency: length,
        diameter: length,
        wound: v.boolean(),
        massPerLength: length,
        elastic,
        source: text,
      }),
    ),
    v.minLength(FEWEST_STRINGS),
    v.maxLength(MOST_STRINGS),
  ),
  setup: v.strictObject({
    action: v.strictObject(trebleBass),
    nutHeight: v.optional(v.strictObject(trebleBass), DEFAULT_SETUP.nutHeight),
    relief: length,
    reliefFrets: v.optional(v.strictObject({ from: length, to: length }), DEFAULT_SETUP.reliefFrets),
    fingerDistance: v.optional(length, DEFAULT_SETUP.fingerDistance),
    pushDown: v.optional(length, DEFAULT_SETUP.pushDown),
  }),
  compensation: v.strictObject({
    by: v.picklist(['rule', 'strings', 'own']),
    rule: v.strictObject({
      ...trebleBass,
      reach: v.picklist(['break-point', 'slot-front', 'slot-centre']),
      source: text,
    }),
    own: figures,
    fit: v.optional(
      v.strictObject({
        firstFret: length,
        lastFret: length,
        match: v.picklist(['range', 'octave']),
        nut: v.picklist(['stays', 'moves']),
        line: v.picklist(['least-squares', 'minimax', 'outer']),
      }),
      DEFAULT_FIT,
    ),
    learned: v.optional(
      v.nullable(
        v.strictObject({
          byString: v.record(
            v.pipe(v.string(), v.maxLength(40)),
            v.pipe(v.number(), v.minValue(LEAST), v.maxValue(MOST)),
          ),
          builds: v.pipe(v.number(), v.safeInteger(), v.minValue(1)),
          accepted: v.pipe(v.string(), v.isoTimestamp()),
        }),
      ),
      null,
    ),
  }),
  bridge: v.strictObject({
    outline: v.union([v.strictObject({ shape: v.picklist(SHAPES), parameters: figures }), DRAWN_SCHEMA]),
    slot: v.strictObject({
      fromFront: length,
      length,
      width: length,
      ends: v.picklist(['round', 'square']),
      run: v.optional(v.picklist(['stopped', 'open']), 'stopped'),
      crown: length,
      depth: v.optional(length, 6),
      slant: orNull,
    }),
    pins: v.nullable(
      v.strictObject({
        from: length,
        spread: length,
        row: v.picklist(['parallel', 'square', 'arc']),
        rise: v.optional(length, 0),
        ramp: v.optional(v.nullable(v.strictObject({ length, width: length })), null),
        hole: length,
        stagger: v.optional(length, 0),
        taper: v.optional(length, DEFAULT_TAPER),
        underHead: v.optional(length, DEFAULT_UNDER_HEAD),
      }),
    ),
    ties: v.optional(
      v.nullable(
        v.strictObject({
          kind: v.picklist(['tie-block', 'back-edge']),
          from: length,
          spread: length,
          hole: length,
          rise: length,
        }),
      ),
      null,
    ),
    cutting: v.optional(v.nullable(v.strictObject({ cutter: length, base: length })), null),
    sole: v.optional(v.nullable(SOLE_SCHEMA), null),
    locating: v.strictObject({
      site: v.picklist(['slot-ends', 'outer-pin-holes', 'free']),
      drill: length,
      points: v.optional(v.nullable(v.strictObject({ treble: POINT_SCHEMA, bass: POINT_SCHEMA })), null),
      clearance: v.optional(length, DEFAULT_CLEARANCE),
    }),
    thickness: v.optional(length, 9),
    rim: v.optional(length, DEFAULT_RIM),
    density: v.optional(length, DEFAULT_DENSITY),
  }),
  height: v.optional(
    v.strictObject({
      kind: v.picklist(['steel', 'classical', 'ukulele']),
      straightedge: orNull,
      pickup: length,
      run: length,
    }),
    DEFAULT_HEIGHT,
  ),
  audit: v.optional(
    v.strictObject({
      from: v.picklist(['nut', 'twelfth']),
      treble: orNull,
      bass: orNull,
      centsTreble: orNull,
      centsBass: orNull,
      actionTreble: orNull,
      actionBass: orNull,
      saddleThickness: length,
      crown: length,
      slotWidth: length,
      pinSpread: orNull,
      pinsFromSlot: orNull,
      pinsToBack: orNull,
      ahead: orNull,
    }),
    DEFAULT_AUDIT,
  ),
  body: v.optional(v.nullable(BODY_SCHEMA), null),
  repair: v.optional(v.nullable(REPAIR_SCHEMA), null),
  dimensions: v.optional(v.pipe(v.array(DIMENSION_SCHEMA), v.maxLength(MOST_DIMENSIONS)), []),
  sheets: v.optional(
    v.strictObject({ chosen: v.pipe(v.array(v.pipe(v.string(), v.maxLength(40))), v.maxLength(MOST_SHEETS)) }),
    DEFAULT_SHEETS,
  ),
  doubts: v.optional(figures, {}),
  limits: v.optional(figures, {}),
  build: v.optional(v.nullable(BUILD_SCHEMA), null),
}) satisfies v.GenericSchema<unknown, Project>;
