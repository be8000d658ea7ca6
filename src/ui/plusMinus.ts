/** One sigma as the ± that holds in 19 cases of 20, as the survey states it: the normal distribution's 95 %. */
export const NINETEEN_OF_TWENTY = 1.96;
