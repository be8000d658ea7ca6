import { useId } from 'react';
import type { LibraryFilter } from '../../../core/library/findEntries';
import type { LibraryOrder } from '../../../core/library/sortEntries';
import type { LibraryEntry } from '../../../core/ports';
import { parseLength } from '../../../core/units/parseLength';
import { lengthText } from '../../../store/fieldText';
import { More } from '../../fields/More';
import { RadioRow } from '../../fields/RadioRow';
import { SelectRow } from '../../fields/SelectRow';
import { TextBox } from '../../fields/TextBox';
import { useLengths } from '../../useLengths';
import { KIND_WORDS, shapeWords } from './entryWords';

interface LibraryFiltersProps {
  readonly entries: readonly LibraryEntry[];
  readonly filter: LibraryFilter;
  readonly order: LibraryOrder;
  readonly find: (change: Partial<LibraryFilter>) => void;
  readonly sort: (order: LibraryOrder) => void;
}

const SORTS = [
  { value: 'all', label: 'All' },
  { value: 'models', label: 'Models' },
  { value: 'instruments', label: 'Instruments' },
] as const;
const ORDERS: readonly { readonly value: LibraryOrder; readonly label: string }[] = [
  { value: 'changed', label: 'last changed first' },
  { value: 'created', label: 'newest first' },
  { value: 'name', label: 'by name' },
  { value: 'serial', label: 'by number' },
  { value: 'scale', label: 'by scale length' },
];
const HANDS = [
  { value: '', label: 'either' },
  { value: 'right', label: 'right-handed' },
  { value: 'left', label: 'left-handed' },
];
const ARCHIVED = [
  { value: 'without', label: 'left out' },
  { value: 'with', label: 'among the others' },
  { value: 'only', label: 'alone' },
];

/** Each value that occurs, once, as the choices of a select. */
const choicesOf = (values: readonly string[], words: (value: string) => string) => [
  { value: '', label: 'any' },
  ...[...new Set(values)].map((value) => ({ value, label: words(value) })),
];

const orNull = <Value extends string>(value: string): Value | null => (value === '' ? null : (value as Value));

/** What is looked for in the library, and in which order it is shown. */
export function LibraryFilters({ entries, filter, order, find, sort }: LibraryFiltersProps) {
  const search = useId();
  const strings = [...new Set(entries.map((entry) => entry.strings))].sort((one, other) => one - other).map(String);
  return (
    <search className="library-filters">
      <div className="field field-wide">
        <label htmlFor={search}>Search the library</label>
        <span className="box">
          <input
            id={search}
            type="search"
            autoComplete="off"
            placeholder="name, number, notes, wood, origin"
            value={filter.words}
            onChange={({ target }) => find({ words: target.value })}
          />
        </span>
      </div>
      <RadioRow label="What to show" value={filter.of} choices={SORTS} choose={(of) => find({ of })} />
      <More summary="Order and more to look for">
        <SelectRow label="Order" value={order} choices={ORDERS} choose={(chosen) => sort(chosen as LibraryOrder)} />
        <SelectRow
          label="Kind"
          value={filter.kind ?? ''}
          choices={choicesOf(
            entries.map(({ kind }) => kind),
            (kind) => KIND_WORDS[kind] ?? kind,
          )}
          choose={(kind) => find({ kind: orNull(kind) })}
        />
        <SelectRow
          label="Bridge shape"
          value={filter.shape ?? ''}
          choices={choicesOf(
            entries.map(({ shape }) => shape),
            shapeWords,
          )}
          choose={(shape) => find({ shape: orNull(shape) })}
        />
        <SelectRow
          label="Strings"
          value={filter.strings === null ? '' : String(filter.strings)}
          choices={choicesOf(strings, (count) => count)}
          choose={(count) => find({ strings: count === '' ? null : Number(count) })}
        />
        <SelectRow
          label="Built for"
          value={filter.hand ?? ''}
          choices={HANDS}
          choose={(hand) => find({ hand: orNull(hand) })}
        />
        <ScaleBox label="Scale length from" value={filter.least} choose={(least) => find({ least })} />
        <ScaleBox label="Scale length up to" value={filter.most} choose={(most) => find({ most })} />
        <SelectRow
          label="Archived ones"
          value={filter.archived}
          choices={ARCHIVED}
          choose={(archived) => find({ archived: archived as LibraryFilter['archived'] })}
        />
      </More>
    </search>
  );
}

interface ScaleBoxProps {
  readonly label: string;
  readonly value: number | null;
  readonly choose: (mm: number | null) => void;
}

/** One end of a range of scale lengths; empty for any. */
function ScaleBox({ label, value, choose }: ScaleBoxProps) {
  const { style } = useLengths();
  const take = (text: string): string | null => {
    if (text.trim() === '') {
      choose(null);
      return null;
    }
    const read = parseLength(text, style.unit);
    if (!read.ok) return read.issues[0]?.message ?? null;
    choose(read.value);
    return null;
  };
  return (
    <TextBox
      label={label}
      path={`library.${label}`}
      shown={value === null ? '' : lengthText(value, style)}
      unit={style.unit}
      about="Shows only what is at least, or at most, this long. Empty: any."
      decimal
      usual="any"
      take={take}
    />
  );
}
