import { foldText } from './foldText';
import type { LibraryEntry } from './libraryEntry';

/** What is looked for in the library; null and empty words mean any. */
export interface LibraryFilter {
  /** Every one of these words must stand somewhere in name, number, notes, woods or origins. */
  readonly words: string;
  readonly of: 'all' | 'models' | 'instruments';
  readonly kind: string | null;
  readonly hand: 'right' | 'left' | null;
  readonly shape: string | null;
  readonly strings: number | null;
  /** Scale length from and to, mm, both allowed. */
  readonly least: number | null;
  readonly most: number | null;
  readonly archived: 'without' | 'only' | 'with';
  /** Only what was made from this one. */
  readonly parent: string | null;
}

export const ANY_ENTRY: LibraryFilter = {
  words: '',
  of: 'all',
  kind: null,
  hand: null,
  shape: null,
  strings: null,
  least: null,
  most: null,
  archived: 'without',
  parent: null,
};

const folded = new WeakMap<LibraryEntry, string>();

/** What an entry is searched by; made once for each. */
const wordsOf = (entry: LibraryEntry): string => {
  const known = folded.get(entry);
  if (known !== undefined) return known;
  const made = foldText([entry.name, entry.serial ?? '', entry.words].join('\n'));
  folded.set(entry, made);
  return made;
};

const agrees = <Value>(wanted: Value | null, value: Value): boolean => wanted === null || wanted === value;

const inRange = (scale: number | null, { least, most }: LibraryFilter): boolean => {
  if (least === null && most === null) return true;
  return scale !== null && scale >= (least ?? 0) && scale <= (most ?? Number.POSITIVE_INFINITY);
};

const ofSort = ({ serial }: LibraryEntry, of: LibraryFilter['of']): boolean =>
  of === 'all' || (serial === null) === (of === 'models');

const shownArchived = (archived: boolean, wanted: LibraryFilter['archived']): boolean =>
  wanted === 'with' || archived === (wanted === 'only');

/** The entries that are looked for, in the order in which they came. */
export const findEntries = (entries: readonly LibraryEntry[], filter: LibraryFilter): readonly LibraryEntry[] => {
  const words = foldText(filter.words)
    .split(/\s+/)
    .filter((word) => word !== '');
  return entries.filter(
    (entry) =>
      shownArchived(entry.archived, filter.archived) &&
      ofSort(entry, filter.of) &&
      agrees(filter.kind, entry.kind) &&
      agrees(filter.hand, entry.hand) &&
      agrees(filter.shape, entry.shape) &&
      agrees(filter.strings, entry.strings) &&
      agrees(filter.parent, entry.parent) &&
      inRange(entry.scale, filter) &&
      (words.length === 0 || words.every((word) => wordsOf(entry).includes(word))),
  );
};
