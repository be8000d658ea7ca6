import type { Build } from './buildTypes';

/** An instrument of which nothing was read or done yet, with no number of its own. */
export const newBuild = (): Build => ({
  serial: '',
  woods: [],
  top: null,
  film: null,
  rebate: null,
  rounds: [],
  drop: null,
  steps: {},
  glue: null,
  shop: null,
  kept: null,
  movement: null,
  stringUps: [],
});
