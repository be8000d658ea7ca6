/** Doubt of one reading with a half-millimetre steel rule, one sigma, mm: common practice, no source. */
export const RULE_DOUBT = 0.25;
