import type { SaddlePlace } from '../../../bridge/types';
import type { Board } from '../../../instrument/types';

/** A line across the far end of the octave stick. */
export interface StickMark {
  readonly id: 'twelfth' | 'octave' | 'break-treble' | 'break-centre' | 'break-bass';
  readonly label: string;
  /** From the stick's nut end, mm. */
  readonly at: number;
}

/**
 * What a stick carries that is laid from the nut datum to the 12th fret and then walked on, its nut end on the crown of the
 * 12th fret: the fret while it lies at the nut, the octave line and the break points once it is walked on. With the nut where
 * the frets were laid out from, fret and octave line are one mark.
 */
export const stickMarks = (board: Board, saddle: SaddlePlace): readonly StickMark[] => {
  const { twelfth, octave } = board;
  const walked = (y: number): number => y - twelfth;
  const breakAt = (x: number): number => walked(saddle.centre + saddle.slope * x);
  const one = Math.abs(twelfth - walked(octave)) < 0.005;
  const marks: readonly StickMark[] = [
    ...(one ? [] : [{ id: 'twelfth', label: '12th fret, first lay', at: twelfth } as const]),
    { id: 'octave', label: one ? '12th fret; walked on: octave line' : 'octave line, walked on', at: walked(octave) },
    { id: 'break-treble', label: 'break point, treble string', at: breakAt(saddle.strings[0]?.x ?? 0) },
    { id: 'break-centre', label: 'break point, centreline', at: breakAt(0) },
    { id: 'break-bass', label: 'break point, bass string', at: breakAt(saddle.strings.at(-1)?.x ?? 0) },
  ];
  return [...marks].sort((one, other) => one.at - other.at);
};
