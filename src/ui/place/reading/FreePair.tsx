import { type ReactNode, useState } from 'react';
import { namedPair, pairName } from '../../../core/placement/reading/cornerLines';
import { bridgePoints, instrumentPoints } from '../../../core/placement/reading/readCase';
import type { ReadLine, ReadPoint } from '../../../core/placement/reading/types';
import { SelectRow } from '../../fields/SelectRow';
import type { Place } from './usePlace';

const choicesOf = (points: readonly ReadPoint[]) => points.map(({ id, label }) => ({ value: id, label }));

/** A distance between any point of the instrument and any of the bridge. */
export function FreePair({ place, row }: { readonly place: Place; readonly row: (line: ReadLine) => ReactNode }) {
  const { read, round } = place;
  const [from, setFrom] = useState('twelfth-centre');
  const [to, setTo] = useState('locating-treble');
  const chosen = namedPair(read, pairName(from, to));
  const taken = [...new Set((round?.readings ?? []).map(({ line }) => line))].flatMap((id) =>
    id === chosen?.id ? [] : (namedPair(read, id) ?? []),
  );
  return (
    <>
      <SelectRow label="From" value={from} choices={choicesOf(instrumentPoints(read))} choose={setFrom} />
      <SelectRow label="To" value={to} choices={choicesOf(bridgePoints(read))} choose={setTo} />
      <ul className="read-lines">
        {chosen !== null && row(chosen)}
        {taken.map(row)}
      </ul>
    </>
  );
}
