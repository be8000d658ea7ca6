/** A figure's text with the sign of its value; none when it reads as zero. */
export const withSign = (value: number, text: string): string => {
  if (!/[1-9]/.test(text)) return text;
  return `${value < 0 ? '−' : '+'}${text}`;
};

/** "+2.2", "−0.4": cents to a tenth. */
export const signedCents = (cents: number): string => withSign(cents, Math.abs(cents).toFixed(1));
