import type { InstrumentString } from '../../core/document/types';
import { STRING_SETS } from '../../core/kinds/stringSets';
import { SelectRow } from '../fields/SelectRow';
import { useServices } from '../services';
import { useStore } from '../useStore';

/** The set that these strings are; null for strings of the maker's own. */
const setOf = (strings: readonly InstrumentString[]) =>
  STRING_SETS.find(
    (set) =>
      set.strings.length === strings.length &&
      set.strings.every(
        ({ name, diameter }, index) => name === strings[index]?.name && diameter === strings[index]?.diameter,
      ),
  ) ?? null;

/** Chooses the strings by set. */
export function StringSetSelect() {
  const { actions } = useServices().store;
  const set = setOf(useStore((state) => state.project.strings));
  const choices = STRING_SETS.map(({ id, name }) => ({ value: id, label: name }));
  return (
    <>
      <SelectRow
        label="String set"
        about="Gauges decide how equal gaps are shared out; treble first."
        value={set?.id ?? ''}
        choices={set === null ? [{ value: '', label: 'own strings' }, ...choices] : choices}
        choose={(id) => id !== '' && actions.chooseStringSet(id)}
      />
      {set !== null && <p className="field-note">Gauges: {set.source}.</p>}
    </>
  );
}
