/** How a preview is laid out, mm of the picture. The bridge is drawn as long as there is room, whatever its length. */
export const PICTURE = {
  width: 78,
  /** Centreline, from the left edge, and half the length of every bridge. */
  centre: 40.75,
  half: 31.25,
  pad: 1.5,
  /** First dimension line across, from the bridge, and from each to the next. */
  firstSpan: 5,
  nextSpan: 7,
  /** First dimension line along, from the tip, and from each to the next. */
  firstDepth: 3.5,
  nextDepth: 3.5,
  /** Where a leader to a corner comes past the tip. */
  pastTip: 2.2,
  /** Leader square to a hollow. */
  toHollow: 4,
  /** From the bridge to the first shelf with words on its far side, from it to the next, and between words in a row. */
  firstShelf: 8.4,
  firstShelfAbove: 4.5,
  nextShelf: 5.8,
  between: 2,
} as const;
