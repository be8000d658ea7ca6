import { NOTE_SOURCE, noteFrequency } from './noteFrequency';
import type { FigureSource, SetString, StringSet } from './stringSetTypes';

const MEASURED_SCALE = 650;

const MEASURED: FigureSource = {
  standing: 'published',
  says: 'Anderson & Beausoleil, J. Acoust. Soc. Am. 156(1), 683 (2024), authors’ manuscript, measured on 650 mm',
};

/** Note, radius mm, mass g/m, κ, B0, wound: rows of the paper's tables. */
type Row = readonly [note: string, radius: number, massPerLength: number, kappa: number, b0: number, wound: boolean];

const classical = (id: string, name: string, rows: readonly Row[]): StringSet => ({
  id,
  name,
  scaleLength: MEASURED_SCALE,
  strings: rows.map(([note, radius, massPerLength, kappa, b0, wound], i): SetString => {
    const frequency = noteFrequency(note);
    return {
      name: note,
      course: i + 1,
      frequency,
      diameter: 2 * radius,
      wound,
      massPerLength,
      elastic: { kind: 'measured', kappa, b0, at: { scaleLength: MEASURED_SCALE, frequency } },
      sources: { frequency: NOTE_SOURCE, diameter: MEASURED, massPerLength: MEASURED, elastic: MEASURED },
    };
  }),
});

/** Classical guitar sets with measured stretch and bending. */
export const NYLON_SETS: readonly StringSet[] = [
  classical('nylon-normal', 'Nylon, normal tension', [
    ['E4', 0.356, 0.374, 48.2, 0.0019, false],
    ['B3', 0.409, 0.505, 48.7, 0.0022, false],
    ['G3', 0.512, 0.836, 58.6, 0.00301, false],
    ['D3', 0.368, 1.92, 46.0, 0.00192, true],
    ['A2', 0.445, 3.289, 48.7, 0.00239, true],
    ['E2', 0.546, 5.47, 58.2, 0.00321, true],
  ]),
  classical('nylon-hard', 'Nylon, hard tension', [
    ['E4', 0.362, 0.386, 47.9, 0.00193, false],
    ['B3', 0.415, 0.522, 53.5, 0.00234, false],
    ['G3', 0.521, 0.856, 57.5, 0.00304, false],
    ['D3', 0.381, 2.007, 46.4, 0.002, true],
    ['A2', 0.457, 3.486, 49.0, 0.00246, true],
    ['E2', 0.559, 5.666, 51.9, 0.0031, true],
  ]),
  classical('carbon-normal', 'Fluorocarbon trebles, normal tension', [
    ['E4', 0.305, 0.464, 44.6, 0.00157, false],
    ['B3', 0.345, 0.607, 53.1, 0.00194, false],
    ['G3', 0.42, 0.893, 54.7, 0.00239, false],
    ['D3', 0.356, 1.643, 49.6, 0.00193, true],
    ['A2', 0.445, 3.089, 54.7, 0.00253, true],
    ['E2', 0.559, 5.715, 47.9, 0.00298, true],
  ]),
];
