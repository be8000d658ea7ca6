import type { LibraryEntry } from './libraryEntry';

/** changed and created: the latest first. scale: the shortest first. serial: by number or name, models after them. */
export type LibraryOrder = 'changed' | 'created' | 'name' | 'serial' | 'scale';

type Compare = (one: LibraryEntry, other: LibraryEntry) => number;

/** Numbers in names count as numbers: 9 before 10. */
const words = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

const latest = (one: string, other: string): number => (one === other ? 0 : one < other ? 1 : -1);

/** What has no value comes last. */
const lastIfNull = <Value>(
  one: Value | null,
  other: Value | null,
  compare: (one: Value, other: Value) => number,
): number => {
  if (one === null || other === null) return Number(one === null) - Number(other === null);
  return compare(one, other);
};

const byName: Compare = (one, other) => words.compare(one.name, other.name);
const bySerial: Compare = (one, other) => lastIfNull(one.serial, other.serial, words.compare);

const ORDERS: Readonly<Record<LibraryOrder, readonly Compare[]>> = {
  changed: [(one, other) => latest(one.changed, other.changed)],
  created: [(one, other) => latest(one.created, other.created)],
  name: [byName, bySerial],
  serial: [bySerial, byName],
  scale: [(one, other) => lastIfNull(one.scale, other.scale, (least, most) => least - most), byName, bySerial],
};

/** The entries in an order that is the same each time. */
export const sortEntries = (entries: readonly LibraryEntry[], order: LibraryOrder): readonly LibraryEntry[] => {
  const compares: readonly Compare[] = [...ORDERS[order], (one, other) => (one.id < other.id ? -1 : 1)];
  return [...entries].sort((one, other) => {
    for (const compare of compares) {
      const found = compare(one, other);
      if (found !== 0) return found;
    }
    return 0;
  });
};
