import * as v from 'valibot';
import type { Project } from '../core/document/types';

const length = v.pipe(v.number(), v.finite());
const name = v.pipe(v.string(), v.maxLength(200));
const text = v.pipe(v.string(), v.maxLength(20_000));
const trebleBass = { treble: length, bass: length };
const figures = v.record(v.pipe(v.string(), v.maxLength(40)), length);

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
  }),
  instrument: v.strictObject({
    hand: v.picklist(['right', 'left']),
    frets: v.strictObject({ bodyJoin: length }),
    widths: v.strictObject({ nut: length, twelfth: length }),
    nut: v.strictObject({ datum: v.picklist(['front', 'zero-fret', 'board-end']), offset: length, face: length }),
    scale: v.strictObject({
      from: v.picklist(['entered', 'readings']),
      entered: length,
      readings: v.pipe(
        v.array(
          v.strictObject({ fret: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(36)), value: length }),
        ),
        v.maxLength(3),
      ),
    }),
    margins: v.strictObject(trebleBass),
    gapRule: v.picklist(['equal-gaps', 'equal-centres']),
    spread: v.strictObject({ from: v.picklist(['edges', 'own']), own: length }),
  }),
  strings: v.pipe(
    v.array(
      v.strictObject({
        id: v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{1,40}$/)),
        name,
        diameter: v.pipe(length, v.minValue(0.05), v.maxValue(5)),
      }),
    ),
    v.minLength(2),
    v.maxLength(24),
  ),
  setup: v.strictObject({ action: v.strictObject(trebleBass), relief: length }),
  compensation: v.strictObject({
    by: v.picklist(['rule', 'own']),
    rule: v.strictObject({
      ...trebleBass,
      reach: v.picklist(['break-point', 'slot-front', 'slot-centre']),
      source: text,
    }),
    own: figures,
  }),
  bridge: v.strictObject({
    outline: v.strictObject({ shape: v.picklist(['belly', 'tie-block', 'small-ukulele']), parameters: figures }),
    slot: v.strictObject({
      fromFront: length,
      length,
      width: length,
      ends: v.picklist(['round', 'square']),
      crown: length,
    }),
    pins: v.nullable(
      v.strictObject({ from: length, spread: length, row: v.picklist(['parallel', 'square']), hole: length }),
    ),
    locating: v.strictObject({ site: v.picklist(['slot-ends', 'outer-pin-holes']), drill: length }),
  }),
}) satisfies v.GenericSchema<unknown, Project>;
