/** A name with treble for bass and bass for treble: "X-leg, bass" is "X-leg, treble". */
export const otherSideName = (name: string): string =>
  name.replace(/\b(?:treble|bass)\b/gi, (side) => {
    const other = side.toLowerCase() === 'treble' ? 'bass' : 'treble';
    return side.charAt(0) === side.charAt(0).toUpperCase() ? other.charAt(0).toUpperCase() + other.slice(1) : other;
  });
