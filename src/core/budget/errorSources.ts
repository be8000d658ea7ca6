/** What may carry a bridge while it is placed, drilled and pinned. */
export interface ErrorSource {
  /** As its field is called, after "doubts.". */
  readonly id: ErrorId;
  readonly label: string;
  /** The usual size, in its own unit: one sigma, mm; radians for the square; a share for paper and print; a clearance for the pin. */
  readonly usual: number;
  readonly source: string;
  /** What to do about it. */
  readonly remedy: string;
}

export type ErrorId =
  | 'placeRule'
  | 'placeParallax'
  | 'placeSquare'
  | 'placeTemplate'
  | 'placePaper'
  | 'placePrint'
  | 'placeTape'
  | 'placeDrill'
  | 'placePin';

const PRACTICE = 'common practice, no source';
const DEGREE = Math.PI / 180;

/** Every source of error of the work, in its order. */
export const ERROR_SOURCES: readonly ErrorSource[] = [
  {
    id: 'placeRule',
    label: 'Reading the rule',
    usual: 0.25,
    source: `half a division of half a millimetre either way: ${PRACTICE}`,
    remedy: 'Read three times and take the mean, or read from the 12th fret, which halves a doubled error.',
  },
  {
    id: 'placeParallax',
    label: 'Looking aslant at the rule',
    usual: 0.1,
    source: PRACTICE,
    remedy: 'Put the rule on edge, so that its marks touch the work, and look with one eye from above.',
  },
  {
    id: 'placeSquare',
    label: 'Square out of square',
    usual: 0.5 * DEGREE,
    source: PRACTICE,
    remedy: 'Turn the square about and read again: the mean of both is free of its error.',
  },
  {
    id: 'placeTemplate',
    label: 'Template cut off its line',
    usual: 0.2,
    source: PRACTICE,
    remedy: 'A fresh blade along a steel straightedge; half of the line gone, half left.',
  },
  {
    id: 'placePaper',
    label: 'Paper’s stretch',
    usual: 0.002,
    source: 'bond paper, 0.1 to 0.4 %: faj-chemicalimpression.blogspot.com, October 2011',
    remedy: 'Read the long lines again on the day, or work by the figures and not by the print.',
  },
  {
    id: 'placePrint',
    label: 'Print factor',
    usual: 0.001,
    source: `what a proved print may still be off by: ${PRACTICE}`,
    remedy: 'Prove the print on its long lines with a finer rule.',
  },
  {
    id: 'placeTape',
    label: 'Creep of the tape',
    usual: 0.15,
    source: `tape alone lets it move: ${PRACTICE}`,
    remedy: 'Read again once it is taped, and drill at once; three or four layers as a fence.',
  },
  {
    id: 'placeDrill',
    label: 'Wander of the drill',
    usual: 0.15,
    source: PRACTICE,
    remedy: 'Drill through the bridge itself, with a brad point or a guide, the first pin in before the second hole.',
  },
  {
    id: 'placePin',
    label: 'Locating pin loose in its hole',
    usual: 0.1,
    source: `hole less pin, bridge and top together: ${PRACTICE}`,
    remedy: 'Take the pins from the same rod as the drill, or the shank of the drill itself.',
  },
];
