import * as v from 'valibot';

/** The version of library files that this Saddlemark writes. */
export const LIBRARY_VERSION = 1;

const MOST_PROJECTS = 5000;
const MOST_PICTURES = 20_000;
const LONGEST_PICTURE = 4_000_000;

const id = v.pipe(v.string(), v.maxLength(200));

/** A file of a whole library; each project in it is checked by itself. */
export const LIBRARY_SCHEMA = v.strictObject({
  format: v.literal('saddlemark-library'),
  version: v.literal(LIBRARY_VERSION),
  projects: v.pipe(v.array(v.unknown()), v.maxLength(MOST_PROJECTS)),
  archived: v.pipe(v.array(id), v.maxLength(MOST_PROJECTS)),
  pictures: v.pipe(
    v.array(
      v.strictObject({
        id,
        type: v.picklist(['image/jpeg', 'image/png', 'image/webp']),
        base64: v.pipe(v.string(), v.maxLength(LONGEST_PICTURE)),
      }),
    ),
    v.maxLength(MOST_PICTURES),
  ),
  bench: v.nullable(v.pipe(v.string(), v.maxLength(200_000))),
});
