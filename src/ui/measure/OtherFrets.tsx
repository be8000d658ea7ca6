import { useState } from 'react';
import { READING_COUNT } from '../../core/document/instrumentFields';
import { ordinal } from '../../core/units/ordinal';
import { FieldRow } from '../fields/FieldRow';
import { SelectRow } from '../fields/SelectRow';
import { useStore } from '../useStore';

const USUAL_FRETS = [5, 7];

/** Readings to any other fret: they tell a moved nut from a long scale, and show a fret that stands wrong. */
export function OtherFrets() {
  const { scale, frets } = useStore((state) => state.project.instrument);
  const read = [...new Set(scale.readings.map(({ fret }) => fret))].filter((fret) => fret !== 12);
  const [chosen, setChosen] = useState(() => USUAL_FRETS.find((fret) => !read.includes(fret)) ?? 5);
  const choices = Array.from({ length: frets.count }, (_, index) => index + 1).filter((fret) => fret !== 12);
  const shown = [...new Set([...read, chosen])].sort((a, b) => a - b);
  return (
    <>
      <p className="hint">
        With a second fret the nut’s own place shows; from four frets on, one that stands wrong can be told.
      </p>
      <SelectRow
        label="Another fret"
        about="Which fret to read next; those already read stay below."
        value={String(chosen)}
        choices={choices.map((fret) => ({ value: String(fret), label: `${ordinal(fret)} fret` }))}
        choose={(fret) => setChosen(Number(fret))}
      />
      {shown.map((fret) => (
        <FretReadings key={fret} fret={fret} given={scale.readings.filter((each) => each.fret === fret).length} />
      ))}
    </>
  );
}

function FretReadings({ fret, given }: { readonly fret: number; readonly given: number }) {
  const shown = Math.min(READING_COUNT, given + 1);
  return Array.from({ length: shown }, (_, index) => `instrument.scale.readings.${fret}.${index}`).map((path) => (
    <FieldRow key={path} path={path} />
  ));
}
