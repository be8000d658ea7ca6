/** More than anyone keeps of one instrument; holds a file and every change to a size. */
export const MOST_ROUNDS = 60;
export const MOST_READ_LINES = 120;
export const MOST_STEPS = 60;
export const MOST_CLAMPS = 12;
export const MOST_WOODS = 20;
export const MOST_STRING_UPS = 60;
export const MOST_PICTURES = 24;
