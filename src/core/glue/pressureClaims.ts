import { vacuumPressure } from './vacuumPressure';

/** From least to most, pounds a square inch. */
export interface PressureRange {
  readonly least: number;
  readonly most: number;
}

/** What one source says that joints want. */
export interface PressureClaim {
  readonly who: string;
  readonly source: string;
  readonly joints: readonly {
    /** For which glue and wood. */
    readonly joint: string;
    /** Null where no figure is given. */
    readonly psi: PressureRange | null;
    /** What is said in place of a figure, or beside it. */
    readonly note: string;
  }[];
}

/** Side by side, because they disagree by more than ten to one and joints of all these kinds hold. None of them is a limit. */
export const PRESSURE_CLAIMS: readonly PressureClaim[] = [
  {
    who: 'Bench, vacuum',
    source: 'customguitars.com, vacuum clamping',
    joints: [
      {
        joint: 'any glue, close-fitting joint',
        psi: { least: vacuumPressure(20), most: vacuumPressure(25) },
        note: '20 to 25 inHg',
      },
    ],
  },
  {
    who: 'Bench, three or four clamps',
    source: 'mimf.com, argapa.blogspot.com, loonsong.ca',
    joints: [{ joint: 'any glue, close-fitting joint', psi: null, note: 'snug and even' }],
  },
  {
    who: 'An adhesive maker, for wood glue',
    source: 'as quoted at ukuleles.com, bridge gluing calculations',
    joints: [
      { joint: 'softwood, such as spruce or cedar', psi: { least: 100, most: 150 }, note: '' },
      { joint: 'medium hardwood, such as mahogany or walnut', psi: { least: 125, most: 175 }, note: '' },
      { joint: 'dense hardwood, such as rosewood or ebony', psi: { least: 175, most: 250 }, note: '' },
    ],
  },
  {
    who: 'A handbook',
    source: 'federal Wood Handbook, chapter on adhesives: from memory',
    joints: [{ joint: 'from light to the densest wood', psi: { least: 100, most: 247 }, note: '' }],
  },
  {
    who: 'Common practice',
    source: 'from memory',
    joints: [
      { joint: 'epoxy', psi: null, note: 'just closed; more starves it' },
      { joint: 'hot hide and fish glue', psi: null, note: 'closed before it gels' },
    ],
  },
];
