import { MM_PER_INCH } from '../units/mmPerInch';

/** A generic set by gauge, treble first; diameters in mm. */
export interface StringSet {
  readonly id: string;
  readonly name: string;
  readonly source: string;
  readonly strings: readonly { readonly name: string; readonly diameter: number }[];
}

const inches = (names: readonly string[], gauges: readonly number[]): StringSet['strings'] =>
  names.map((name, index) => ({ name, diameter: (gauges[index] ?? Number.NaN) * MM_PER_INCH }));

const millimetres = (names: readonly string[], diameters: readonly number[]): StringSet['strings'] =>
  names.map((name, index) => ({ name, diameter: diameters[index] ?? Number.NaN }));

const GUITAR = ['E', 'B', 'G', 'D', 'A', 'E'];

/** Generic sets to start from; gauges from memory where the source says so. */
export const STRING_SETS: readonly StringSet[] = [
  {
    id: 'steel-10-47',
    name: 'Steel .010 to .047',
    source: 'from memory',
    strings: inches(GUITAR, [0.01, 0.014, 0.023, 0.03, 0.039, 0.047]),
  },
  {
    id: 'steel-11-52',
    name: 'Steel .011 to .052',
    source: 'from memory',
    strings: inches(GUITAR, [0.011, 0.015, 0.022, 0.032, 0.042, 0.052]),
  },
  {
    id: 'steel-12-53',
    name: 'Steel .012 to .053',
    source: 'from memory',
    strings: inches(GUITAR, [0.012, 0.016, 0.024, 0.032, 0.042, 0.053]),
  },
  {
    id: 'steel-13-56',
    name: 'Steel .013 to .056',
    source: 'from memory',
    strings: inches(GUITAR, [0.013, 0.017, 0.026, 0.035, 0.045, 0.056]),
  },
  {
    id: 'nylon-normal',
    name: 'Nylon, normal tension',
    source: 'radii of Anderson & Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024), doubled',
    strings: millimetres(GUITAR, [0.712, 0.818, 1.024, 0.736, 0.89, 1.092]),
  },
  {
    id: 'ukulele-tenor',
    name: 'Tenor ukulele, high G',
    source: 'estimated',
    strings: millimetres(['A', 'E', 'C', 'G'], [0.56, 0.68, 0.84, 0.6]),
  },
];
