import { SHAPE_NAMES } from '../../../core/document/shapeNames';
import type { ShapeName } from '../../../core/document/types';
import type { LibraryEntry } from '../../../core/ports';

/** Kinds by their height limits, as makers call them. */
export const KIND_WORDS: Readonly<Record<string, string>> = {
  steel: 'Steel-string',
  classical: 'Classical',
  ukulele: 'Ukulele',
};

/** What an outline is called: its shape, or that it is drawn freely. */
export const shapeWords = (shape: string): string =>
  shape === 'drawn' ? 'Drawn freely' : (SHAPE_NAMES[shape as ShapeName] ?? shape);

/** What an entry is called: "Wren 14" for a model, "Wren 14, No. 12" for an instrument. */
export const entryTitle = ({ name, serial }: Pick<LibraryEntry, 'name' | 'serial'>): string => {
  const model = name.trim() === '' ? 'Unnamed' : name;
  if (serial === null) return model;
  return serial.trim() === '' ? `${model}, no number yet` : `${model}, ${serial}`;
};

/** What it is, in a line: "Steel-string · 632.0 mm · 6 strings · right · Belly, toward the tail". */
export const entryLine = (entry: LibraryEntry, withUnit: (mm: number) => string): string =>
  [
    KIND_WORDS[entry.kind] ?? entry.kind,
    entry.scale === null ? 'scale not known' : withUnit(entry.scale),
    `${entry.strings} strings`,
    entry.hand === 'left' ? 'left-handed' : 'right-handed',
    shapeWords(entry.shape),
  ].join(' · ');
