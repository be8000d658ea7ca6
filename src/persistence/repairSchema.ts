import * as v from 'valibot';
import { MOST_FORMER_HOLES } from '../core/document/repairFields';
import { SHAPE_NAMES } from '../core/document/shapeNames';
import type { ShapeName } from '../core/document/types';
import { DRAWN_SCHEMA } from './pathSchema';

const length = v.pipe(v.number(), v.finite());
const from = v.picklist(['front', 'nut']);

/** The bridge that was there before. */
export const REPAIR_SCHEMA = v.strictObject({
  footprint: v.strictObject({
    outline: v.union([
      v.strictObject({
        shape: v.picklist(Object.keys(SHAPE_NAMES) as ShapeName[]),
        parameters: v.record(v.pipe(v.string(), v.maxLength(40)), length),
      }),
      DRAWN_SCHEMA,
    ]),
    front: length,
    aside: length,
    turn: length,
  }),
  holes: v.nullable(
    v.variant('kind', [
      v.strictObject({
        from,
        kind: v.literal('row'),
        count: length,
        spread: length,
        distance: length,
        aside: length,
        slant: length,
        stagger: length,
        diameter: length,
      }),
      v.strictObject({
        from,
        kind: v.literal('each'),
        each: v.pipe(
          v.array(
            v.strictObject({
              id: v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{1,40}$/)),
              x: length,
              y: length,
              diameter: length,
            }),
          ),
          v.minLength(1),
          v.maxLength(MOST_FORMER_HOLES),
        ),
      }),
    ]),
  ),
  slot: v.nullable(
    v.strictObject({
      from,
      distance: length,
      aside: length,
      slant: length,
      length,
      width: length,
      depth: length,
      ends: v.picklist(['round', 'square']),
    }),
  ),
});
