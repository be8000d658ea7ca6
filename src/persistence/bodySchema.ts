import * as v from 'valibot';
import { BRACE_KINDS, MOST_BRACES } from '../core/document/bodyFields';
import type { BraceKind } from '../core/document/bodyTypes';
import { POINT_SCHEMA } from './pathSchema';

const length = v.pipe(v.number(), v.finite());

/** What lies beneath and around the bridge. */
export const BODY_SCHEMA = v.strictObject({
  hand: v.nullable(v.picklist(['right', 'left'])),
  from: v.picklist(['nut', 'octave', 'front']),
  across: v.optional(v.nullable(length), null),
  tail: v.optional(v.nullable(length), null),
  braces: v.pipe(
    v.array(
      v.strictObject({
        id: v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{1,40}$/)),
        name: v.pipe(v.string(), v.maxLength(60)),
        kind: v.picklist(Object.keys(BRACE_KINDS) as BraceKind[]),
        from: POINT_SCHEMA,
        to: POINT_SCHEMA,
        width: length,
        height: v.nullable(length),
        read: v.boolean(),
      }),
    ),
    v.maxLength(MOST_BRACES),
  ),
  plate: v.nullable(
    v.strictObject({
      front: length,
      aside: length,
      along: length,
      acrossFront: length,
      acrossBack: length,
      thickness: length,
      read: v.boolean(),
    }),
  ),
  soundhole: v.nullable(v.strictObject({ centre: length, across: length, along: v.nullable(length) })),
  cutaway: v.nullable(v.strictObject({ side: v.picklist(['treble', 'bass']), aside: length, end: length })),
  wireHole: v.nullable(v.strictObject({ at: POINT_SCHEMA, diameter: length })),
});
