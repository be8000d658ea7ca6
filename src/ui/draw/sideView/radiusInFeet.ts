const FEET = /^\s*(\d+(?:[.,]\d+)?)\s*(?:ft|feet|foot|['′’])\s*$/iu;
const INCHES_PER_FOOT = 12;
const MM_PER_FOOT = 304.8;

/** A radius typed in feet, "28 ft", in inches; any other text as it is. */
export const radiusInFeet = (text: string): string => {
  const feet = FEET.exec(text)?.[1];
  return feet === undefined ? text : `${Number((Number(feet.replace(',', '.')) * INCHES_PER_FOOT).toFixed(6))} in`;
};

/** A radius as makers call it: "28 ft", "27.9 ft"; nothing for flat. mm */
export const feetNote = (radius: number | null): string | undefined =>
  radius === null ? undefined : `${Number((radius / MM_PER_FOOT).toFixed(1))} ft`;
