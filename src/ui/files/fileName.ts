/** Characters that some system refuses in a file name, or hides. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is taken out
const FORBIDDEN = /[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\ufeff<>:"/\\|?*]+/g;
const LONGEST = 80;

/** A file name from an instrument's name: "Wren 14 template.pdf". */
export const fileName = (instrument: string, what: string, ending: string): string => {
  const plain = instrument
    .replace(FORBIDDEN, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^[. ]+|[. ]+$/g, '')
    .slice(0, LONGEST)
    .trim();
  return `${[plain === '' ? 'Saddlemark' : plain, what].filter((part) => part !== '').join(' ')}.${ending}`;
};
