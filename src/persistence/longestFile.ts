/** Characters; a project takes a few thousand, so what is longer is something else. */
export const LONGEST_FILE = 5_000_000;
