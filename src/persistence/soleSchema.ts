import * as v from 'valibot';

const length = v.pipe(v.number(), v.finite());
const radius = v.nullable(length);

/** The sole of the bridge and the top beneath it. */
export const SOLE_SCHEMA = v.strictObject({
  wing: v.strictObject({ tip: length, inner: length, begin: length }),
  face: radius,
  draft: length,
  sanding: length,
  across: radius,
  along: radius,
  top: v.strictObject({
    from: v.picklist(['radius', 'gaps']),
    across: radius,
    along: radius,
    gaps: v.strictObject({ bassTip: length, bassWing: length, centre: length, trebleWing: length, trebleTip: length }),
    under: radius,
  }),
});
