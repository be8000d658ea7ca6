/**
 * A short sum of a text, 16 hexadecimal digits: the same text always has the same, a text changed by accident almost
 * surely another. Two runs of the FNV-1a hash with different starts, 32 bits each; no protection against intent.
 */
export const sumOf = (text: string): string => {
  let one = 0x811c9dc5;
  let other = 0x9747b28c;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    one = Math.imul(one ^ code, 0x01000193);
    other = Math.imul(other ^ code ^ (i & 0xff), 0x01000193);
  }
  return [one, other].map((part) => (part >>> 0).toString(16).padStart(8, '0')).join('');
};
