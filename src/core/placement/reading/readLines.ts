import type { LengthStyle } from '../../units/formatLength';
import { alongLines } from './alongLines';
import { asideLines } from './asideLines';
import { cornerLines, namedPair } from './cornerLines';
import type { ReadCase } from './readCase';
import type { ReadLine } from './types';

/**
 * Everything that can be read of this bridge in its place, with what the tool shows where it sits as it should. The figures
 * are the same for either hand. `style` is for the words alone.
 */
export const readLines = (read: ReadCase, style: LengthStyle): readonly ReadLine[] => [
  ...alongLines(read, style),
  ...asideLines(read),
  ...cornerLines(read),
];

/** A line by its name, free pairs among them; null when this instrument has none of that name. */
export const readLineAt = (read: ReadCase, lines: readonly ReadLine[], id: string): ReadLine | null =>
  lines.find((line) => line.id === id) ?? namedPair(read, id);
