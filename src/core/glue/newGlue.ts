import type { GluePlan } from '../document/buildTypes';

/** Of a clamp into the body, from the edge of the soundhole, mm. */
export const USUAL_REACH = 200;

export const REACH_SOURCE = 'a common size of bridge clamp: from memory';

/** A glue-up of which nothing was said yet: times and pressure stay empty until they are read on a label. */
export const newGlue = (): GluePlan => ({
  adhesive: '',
  pressure: null,
  times: { open: null, closed: null, clamp: null, cure: null },
  clamps: null,
  reach: USUAL_REACH,
});
