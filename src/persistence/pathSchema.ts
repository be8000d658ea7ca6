import * as v from 'valibot';

/** Segments that a saved outline may have. */
const MOST_SEGMENTS = 4000;

const coordinate = v.pipe(v.number(), v.finite());

/** A point, mm. */
export const POINT_SCHEMA = v.strictObject({ x: coordinate, y: coordinate });

/** An outline of lines, true arcs and cubics. */
const PATH_SCHEMA = v.strictObject({
  start: POINT_SCHEMA,
  segments: v.pipe(
    v.array(
      v.variant('kind', [
        v.strictObject({ kind: v.literal('line'), to: POINT_SCHEMA }),
        v.strictObject({ kind: v.literal('arc'), to: POINT_SCHEMA, centre: POINT_SCHEMA, clockwise: v.boolean() }),
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
