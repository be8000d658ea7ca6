import type { FigureSource } from './stringSetTypes';

const SEMITONES = { C: -9, D: -7, E: -5, F: -4, G: -2, A: 0, B: 2 } as const;

/**
 * Frequency of a note such as 'E4' or 'F#3', Hz: equal temperament on A4 = 440 (ISO 16).
 * @throws RangeError for anything but a letter A to G, perhaps a sharp sign, and an octave digit
 */
export function noteFrequency(note: string): number {
  const [, letter, sharp, octave] = /^([A-G])(#?)(\d)$/.exec(note) ?? [];
  if (letter === undefined) throw new RangeError(`note: expected a note and an octave such as E4 or F#3, got ${note}`);
  const semitone = SEMITONES[letter as keyof typeof SEMITONES] + (sharp === '#' ? 1 : 0);
  return 440 * 2 ** (semitone / 12 + Number(octave) - 4);
}

export const NOTE_SOURCE: FigureSource = {
  standing: 'computed',
  says: 'equal temperament, A4 = 440 Hz (ISO 16)',
};
