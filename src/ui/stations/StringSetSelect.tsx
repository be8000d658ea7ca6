import { useMemo } from 'react';
import type { InstrumentString } from '../../core/document/types';
import { STRING_SETS } from '../../core/intonation/stringSets';
import { stringsOfSet } from '../../core/kinds/stringsOfSet';
import { SelectRow } from '../fields/SelectRow';
import { useServices } from '../services';
import { useStore } from '../useStore';

/** The set that these strings are, figure for figure; undefined once the maker has changed one. */
const setOf = (strings: readonly InstrumentString[]) => {
  const text = JSON.stringify(strings);
  return STRING_SETS.find(({ id }) => JSON.stringify(stringsOfSet(id)) === text);
};

/** Chooses the strings by set. */
export function StringSetSelect() {
  const { actions } = useServices().store;
  const strings = useStore((state) => state.project.strings);
  const set = useMemo(() => setOf(strings), [strings]);
  const choices = STRING_SETS.map(({ id, name }) => ({ value: id, label: name }));
  return (
    <SelectRow
      label="String set"
      about="Sets by gauge, treble first; every figure in them can be changed below, where its source stands."
      value={set?.id ?? ''}
      choices={set === undefined ? [{ value: '', label: 'own strings' }, ...choices] : choices}
      choose={(id) => id !== '' && actions.chooseStringSet(id)}
    />
  );
}
