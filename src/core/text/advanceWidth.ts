import { BOLD_ADVANCES, CHARACTER_RUNS, type PackedAdvances, REGULAR_ADVANCES, UNITS_PER_EM } from './advances';

/** The two cuts of the printed font. */
export type Cut = 'regular' | 'bold';

const numbers = (text: string): number[] => text.split(' ').map(Number);

const runs = numbers(CHARACTER_RUNS);
const codePoints = runs.flatMap((first, index) =>
  index % 2 === 0 ? Array.from({ length: runs[index + 1] ?? 0 }, (_, step) => first + step) : [],
);

const unpack = ({ different, digits }: PackedAdvances): ReadonlyMap<number, number> => {
  const widths = numbers(different);
  return new Map(
    codePoints.map((codePoint, index) => {
      const which = Number.parseInt(digits.slice(2 * index, 2 * index + 2), 36);
      return [codePoint, (widths[which] ?? Number.NaN) / UNITS_PER_EM];
    }),
  );
};

const advances: Readonly<Record<Cut, ReadonlyMap<number, number>>> = {
  regular: unpack(REGULAR_ADVANCES),
  bold: unpack(BOLD_ADVANCES),
};

/** How far a character moves the pen, as a part of the font size; undefined when the printed font lacks it. */
export const advanceWidth = (character: string, cut: Cut): number | undefined =>
  advances[cut].get(character.codePointAt(0) ?? 0);
