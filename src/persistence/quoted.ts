const LONGEST = 50;

/** Text from a file as a message tells it: never longer than a line. */
export const cut = (text: string): string => (text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text);

/** The same between quotation marks. */
export const quoted = (text: string): string => `"${cut(text)}"`;
