/** Which hand frets: a right-handed instrument is strummed by the right. */
export type Hand = 'right' | 'left';
