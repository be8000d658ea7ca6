/** One odd multiplier a lane; the first is the FNV prime. */
const MULTIPLIERS = [0x01000193, 0x85ebca6b, 0xc2b2ae35, 0x9e3779b1];

/** FNV offset basis, from http://www.isthe.com/chongo/tech/comp/fnv/ */
const OFFSET_BASIS = 0x811c9dc5;

/** 32 hexadecimal digits from a text, the same for the same text: the file identifier of a PDF. Not for secrets. */
export const fileIdentifier = (text: string): string =>
  MULTIPLIERS.map((multiplier) => {
    let hash = OFFSET_BASIS ^ multiplier;
    for (let index = 0; index < text.length; index += 1) hash = Math.imul(hash ^ text.charCodeAt(index), multiplier);
    return (hash >>> 0).toString(16).padStart(8, '0');
  }).join('');
