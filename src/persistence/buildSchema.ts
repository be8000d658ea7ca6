import * as v from 'valibot';
import {
  MOST_CLAMPS,
  MOST_READ_LINES,
  MOST_ROUNDS,
  MOST_STEPS,
  MOST_STRING_UPS,
  MOST_WOODS,
} from '../core/document/mostOfBuild';
import { MOST_STRINGS } from '../core/document/stringCount';
import { LONGEST_METER, LONGEST_NOTE, STRING_UP_LIMITS } from '../core/document/stringUpLimits';
import { POINT_SCHEMA } from './pathSchema';

const length = v.pipe(v.number(), v.finite());
const orNull = v.nullable(length);
const id = v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{1,40}$/));
const name = v.pipe(v.string(), v.maxLength(200));
const instant = v.pipe(v.string(), v.isoTimestamp());
const movement = v.strictObject({ wood: v.pipe(v.string(), v.maxLength(40)), radial: orNull, tangential: orNull });
const air = v.strictObject({ celsius: length, humidity: length });
const fewerThan = <Value>(most: number) =>
  v.check<Readonly<Record<string, Value>>, string>((record) => Object.keys(record).length <= most, `at most ${most}`);
const fret = v.pipe(v.string(), v.regex(/^([1-9]|1[0-9]|2[0-4])$/));

const within = ([least, most]: readonly [number, number]) => v.pipe(v.number(), v.minValue(least), v.maxValue(most));
const withinOrNull = (limits: readonly [number, number]) => v.nullable(within(limits));
const bySetback = v.pipe(v.record(id, within(STRING_UP_LIMITS.setback)), fewerThan(MOST_STRINGS));

const round = v.strictObject({
  id,
  at: instant,
  stage: v.picklist(['dry', 'taped', 'wet', 'cured']),
  readings: v.pipe(
    v.array(v.strictObject({ id, line: name, value: length, tool: name, sigma: length })),
    v.maxLength(MOST_READ_LINES),
  ),
  accepted: v.boolean(),
});

const glue = v.strictObject({
  adhesive: name,
  pressure: orNull,
  times: v.strictObject({ open: orNull, closed: orNull, clamp: orNull, cure: orNull }),
  clamps: v.nullable(v.pipe(v.array(POINT_SCHEMA), v.maxLength(MOST_CLAMPS))),
  reach: length,
});

const stringUp = v.strictObject({
  id,
  at: instant,
  stage: v.picklist(['first', 'settled', 'season']),
  crown: v.picklist(['straight', 'shaped', 'filed']),
  tuner: within(STRING_UP_LIMITS.tuner),
  cents: v.pipe(v.record(id, v.record(fret, within(STRING_UP_LIMITS.cents))), fewerThan(MOST_STRINGS)),
  action: v.strictObject({
    treble: withinOrNull(STRING_UP_LIMITS.action),
    bass: withinOrNull(STRING_UP_LIMITS.action),
  }),
  relief: withinOrNull(STRING_UP_LIMITS.relief),
  humidity: withinOrNull(STRING_UP_LIMITS.humidity),
  meter: v.pipe(v.string(), v.maxLength(LONGEST_METER)),
  note: v.pipe(v.string(), v.maxLength(LONGEST_NOTE)),
  predicted: bySetback,
  stood: bySetback,
});

/** One instrument made from a model. */
export const BUILD_SCHEMA = v.strictObject({
  serial: name,
  woods: v.pipe(v.array(v.strictObject({ id, part: name, species: name, origin: name })), v.maxLength(MOST_WOODS)),
  top: orNull,
  film: orNull,
  rebate: v.nullable(v.strictObject({ width: length, depth: length })),
  drop: v.optional(
    v.nullable(v.strictObject({ by: v.picklist(['top', 'rule']), angle: length, height: length })),
    null,
  ),
  rounds: v.pipe(v.array(round), v.maxLength(MOST_ROUNDS)),
  steps: v.pipe(v.record(id, instant), fewerThan(MOST_STEPS)),
  glue: v.nullable(glue),
  shop: v.nullable(air),
  kept: v.nullable(air),
  movement: v.nullable(v.strictObject({ top: movement, bridge: movement })),
  stringUps: v.pipe(v.array(stringUp), v.maxLength(MOST_STRING_UPS)),
});
