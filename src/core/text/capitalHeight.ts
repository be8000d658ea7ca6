/** Height of the capitals as a part of the font size: the H of DejaVu Sans Condensed is 1493 of 2048 units tall, both cuts. */
export const CAPITAL_HEIGHT = 1493 / 2048;
