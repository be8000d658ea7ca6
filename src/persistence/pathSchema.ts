import * as v from 'valibot';

/** Segments that a saved outline may have. */
const MOST_SEGMENTS = 4000;

/** Further than this nothing of an instrument lies from its nut, mm: ten metres; common practice, no source. */
const FARTHEST = 10_000;

/** Where the centre of an arc may lie, mm: the flattest arc of an outline bends by less than an atom there. */
const FARTHEST_CENTRE = 1e9;

const within = (most: number) => v.pipe(v.number(), v.minValue(-most), v.maxValue(most));

/** A point, mm. */
export const POINT_SCHEMA = v.strictObject({ x: within(FARTHEST), y: within(FARTHEST) });

const CENTRE_SCHEMA = v.strictObject({ x: within(FARTHEST_CENTRE), y: within(FARTHEST_CENTRE) });

/** An outline of lines, true arcs and cubics. */
const PATH_SCHEMA = v.strictObject({
  start: POINT_SCHEMA,
  segments: v.pipe(
    v.array(
      v.variant('kind', [
        v.strictObject({ kind: v.literal('line'), to: POINT_SCHEMA }),
        v.strictObject({ kind: v.literal('arc'), to: POINT_SCHEMA, centre: CENTRE_SCHEMA, clockwise: v.boolean() }),
        v.strictObject({ kind: v.literal('cubic'), to: POINT_SCHEMA, c1: POINT_SCHEMA, c2: POINT_SCHEMA }),
      ]),
    ),
    v.minLength(1),
    v.maxLength(MOST_SEGMENTS),
  ),
  closed: v.boolean(),
});

/** An outline drawn freely. */
export const DRAWN_SCHEMA = v.strictObject({ kind: v.literal('drawn'), path: PATH_SCHEMA, symmetric: v.boolean() });
