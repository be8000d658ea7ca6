import * as v from 'valibot';
import { POINT_SCHEMA } from './pathSchema';

const id = v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{1,40}$/));
const part = v.pipe(v.string(), v.minLength(1), v.maxLength(60));

const anchor = v.variant('kind', [
  v.strictObject({ kind: v.literal('part'), part, feature: part }),
  v.strictObject({ kind: v.literal('point'), at: POINT_SCHEMA }),
]);

/** A dimension that the maker pinned. */
export const DIMENSION_SCHEMA = v.variant('kind', [
  v.strictObject({
    kind: v.literal('distance'),
    id,
    way: v.picklist(['straight', 'across', 'along']),
    from: anchor,
    to: anchor,
  }),
  v.strictObject({ kind: v.literal('angle'), id, from: anchor, corner: anchor, to: anchor }),
  v.strictObject({ kind: v.literal('gap'), id, from: part, to: part }),
]);
