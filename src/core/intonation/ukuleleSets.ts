import { NOTE_SOURCE, noteFrequency } from './noteFrequency';
import type { FigureSource, SetString, StringSet } from './stringSetTypes';

/**
 * Whole-string densities, g/cm³, that mass = density·π·D²/4 gives for the classical strings of Anderson & Beausoleil,
 * JASA 156(1), 683 (2024): means of the nylon and the fluorocarbon trebles, and the wound D3.
 */
const DENSITY = { nylon: 0.972, fluorocarbon: 1.607, wound: 4.513 } as const;
type Material = keyof typeof DENSITY;

/** Mean κ of those strings: it hardly depends on tension or size there, from 45 to 59. */
const KAPPA = { nylon: 51.8, fluorocarbon: 50.8, wound: 46.0 } as const satisfies Record<Material, number>;

const estimated = (says: string): FigureSource => ({ standing: 'estimated', says });
const DIAMETER = estimated('a common size for this instrument, from memory');
const MASS = (material: Material): FigureSource =>
  estimated(`from the diameter and ${DENSITY[material]} g/cm³, the density of measured classical strings`);
const ELASTIC = (material: Material): FigureSource =>
  estimated(`κ ${KAPPA[material]} as measured on classical strings, taken to hold here; B0 = √κ·D/(4·scale)`);

type Row = readonly [note: string, diameter: number, material: Material];

const ukulele = (id: string, name: string, scaleLength: number, rows: readonly Row[]): StringSet => ({
  id,
  name,
  scaleLength,
  strings: rows.map(([note, diameter, material], i): SetString => {
    const frequency = noteFrequency(note);
    const kappa = KAPPA[material];
    return {
      name: note,
      course: i + 1,
      frequency,
      diameter,
      wound: material === 'wound',
      massPerLength: (DENSITY[material] * Math.PI * diameter * diameter) / 4,
      elastic: {
        kind: 'measured',
        kappa,
        b0: (Math.sqrt(kappa) * diameter) / (4 * scaleLength),
        at: { scaleLength, frequency },
      },
      sources: {
        frequency: NOTE_SOURCE,
        diameter: DIAMETER,
        massPerLength: MASS(material),
        elastic: ELASTIC(material),
      },
    };
  }),
});

const reentrant = (diameters: readonly [number, number, number, number], material: Material): readonly Row[] => [
  ['A4', diameters[0], material],
  ['E4', diameters[1], material],
  ['C4', diameters[2], material],
  ['G4', diameters[3], material],
];

/** Ukulele sets, GCEA with the high G, and the baritone's DGBE. Every figure is an estimate but the pitch. */
export const UKULELE_SETS: readonly StringSet[] = [
  ukulele('ukulele-soprano-nylon', 'Soprano ukulele, nylon, GCEA', 346, reentrant([0.56, 0.66, 0.81, 0.61], 'nylon')),
  ukulele('ukulele-concert-nylon', 'Concert ukulele, nylon, GCEA', 380, reentrant([0.56, 0.66, 0.81, 0.61], 'nylon')),
  ukulele('ukulele-tenor-nylon', 'Tenor ukulele, nylon, GCEA', 432, reentrant([0.61, 0.71, 0.86, 0.66], 'nylon')),
  ukulele(
    'ukulele-tenor-fluorocarbon',
    'Tenor ukulele, fluorocarbon, GCEA',
    432,
    reentrant([0.52, 0.62, 0.74, 0.57], 'fluorocarbon'),
  ),
  ukulele('ukulele-baritone-nylon', 'Baritone ukulele, nylon and wound, DGBE', 510, [
    ['E4', 0.66, 'nylon'],
    ['B3', 0.81, 'nylon'],
    ['G3', 0.62, 'wound'],
    ['D3', 0.74, 'wound'],
  ]),
];
