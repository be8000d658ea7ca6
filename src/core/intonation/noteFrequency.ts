import type { FigureSource } from './stringSetTypes';

const SEMITONES = { C: -9, D: -7, E: -5, F: -4, G: -2, A: 0, B: 2 } as const;

/**
 * Frequency of a note such as 'E4', Hz: equal temperament on A4 = 440 (ISO 16).
 * @throws RangeError for anything but a letter C to B (no sharps: open strings of the sets need none) and an octave digit
 */
export function noteFrequency(note: string): number {
  const [letter, octave] = [note[0] as keyof typeof SEMITONES, Number(note[1])];
  const semitone = SEMITONES[letter];
  if (semitone === undefined || !Number.isInteger(octave) || note.length !== 2) {
    throw new RangeError(`note: expected a letter and an octave such as E4, got ${note}`);
  }
  return 440 * 2 ** (semitone / 12 + octave - 4);
}

export const NOTE_SOURCE: FigureSource = {
  standing: 'computed',
  says: 'equal temperament, A4 = 440 Hz (ISO 16)',
};
