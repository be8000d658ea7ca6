import { useMemo } from 'react';
import { centsGrid } from '../../core/drawing/plots/centsGrid';
import { plotCents } from '../../core/drawing/plots/plotCents';
import type { CentsByFret } from '../../core/drawing/plots/types';
import { useStore } from '../useStore';
import { signedCents } from '../withSign';
import { Picture } from './Picture';

const FRETS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 14];
/** Cents that a full bar stands for: about what a trained ear tells between two notes one after the other; from memory. */
const FULL_BAR = 5;

/** What the model says of every fretted note with the straight saddle as it stands, as a picture and as a table. */
export function CentsView() {
  const { models, saddle } = useStore((state) => state.derived);
  const grid = useMemo((): CentsByFret | null => {
    if (!models.ok || !saddle.ok) return null;
    return {
      strings: models.value.map(({ name }, index) => `${index + 1} ${name}`),
      frets: FRETS,
      cents: centsGrid(models.value, saddle.value, FRETS, 'straight'),
    };
  }, [models, saddle]);
  const plot = useMemo(() => (grid === null ? null : plotCents(grid, FULL_BAR)), [grid]);
  return (
    <>
      <Picture plot={plot} />
      {grid !== null && <CentsTable grid={grid} />}
    </>
  );
}

function CentsTable({ grid }: { readonly grid: CentsByFret }) {
  return (
    <table className="figures loose cents-figures">
      <caption>The same in figures: cents by string and fret, straight saddle as it stands, + sharp</caption>
      <thead>
        <tr>
          <th scope="col">Fret</th>
          {grid.frets.map((fret) => (
            <th key={fret} scope="col">
              {fret}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {grid.strings.map((name, row) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {grid.frets.map((fret, column) => (
              <td key={fret}>{signedCents(grid.cents[row]?.[column] ?? 0)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
