/** Words for a side brought into the sign that the field takes: "1/32 bass" is "-1/32", "0.5 to the treble side" "0.5". */
export const plainSide = (text: string): string => {
  const [, length, side] = /^\s*(.*?)\s*(?:to\s+(?:the\s+)?)?(treble|bass)(?:\s+side)?\s*$/i.exec(text) ?? [];
  if (length === undefined || side === undefined) return text;
  return side.toLowerCase() === 'bass' ? `-${length}` : length;
};

/** Less than this is in the middle, mm. */
const MIDDLE = 0.0005;

/** Where something lies against the middle, in words. */
export const sideWords = (mm: number, show: (mm: number) => string): string =>
  Math.abs(mm) < MIDDLE ? 'In the middle.' : `${show(Math.abs(mm))} to the ${mm > 0 ? 'treble' : 'bass'} side.`;

/** Less than this is square, radians. */
const SQUARE = 5e-6;

/** A turn in words. radians: + when the bass end lies farther back. */
export const turnWords = (radians: number): string => {
  if (Math.abs(radians) < SQUARE) return 'Square to the centreline.';
  const degrees = Math.abs((radians * 180) / Math.PI).toFixed(2);
  return `The ${radians > 0 ? 'bass' : 'treble'} end lies farther back, by ${degrees}°.`;
};
