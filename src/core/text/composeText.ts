/** Tabs and line breaks: a line of print has room only for a space. */
const WHITE_SPACE = /[\t\n\v\f\r\u2028\u2029]+/gu;

/** A text as the font sets it: accents joined with their letters where Unicode has such a letter, and one line. */
export const composeText = (text: string): string => text.normalize('NFC').replace(WHITE_SPACE, ' ');
