/** Millimetres in one inch: exact by the international yard and pound agreement of 1959. */
export const MM_PER_INCH = 25.4;
