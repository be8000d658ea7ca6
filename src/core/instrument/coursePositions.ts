import { fail, ok, type Result } from '../result';
import { type StringPositionsArguments, stringPositions } from './stringPositions';

export interface CoursePositionsArguments extends StringPositionsArguments {
  /** Course of each string, in the order of the diameters. */
  readonly courses: readonly number[];
  /** Centre to centre within a course, mm. */
  readonly pairGap: number;
}

interface Course {
  readonly diameters: readonly number[];
}

const grouped = (courses: readonly number[], diameters: readonly number[]): readonly Course[] => {
  const groups: number[][] = [];
  for (const [index, diameter] of diameters.entries()) {
    if (index > 0 && courses[index] === courses[index - 1]) groups.at(-1)?.push(diameter);
    else groups.push([diameter]);
  }
  return groups.map((each) => ({ diameters: each }));
};

/** A course over all, from the outside of its first string to the outside of its last. */
const widthOf = ({ diameters }: Course, pairGap: number): number =>
  (diameters.length - 1) * pairGap + ((diameters[0] ?? 0) + (diameters.at(-1) ?? 0)) / 2;

/** How wide a course counts: by equal gaps between its outsides, by equal centres evenly about the middle of its strings. */
const widthsOf = (groups: readonly Course[], { pairGap, rule }: CoursePositionsArguments): readonly number[] =>
  groups.map((group, index) => {
    if (rule === 'equal-gaps') return widthOf(group, pairGap);
    const outer = index === groups.length - 1 ? group.diameters.at(-1) : group.diameters[0];
    return (group.diameters.length - 1) * pairGap + (outer ?? 0);
  });

/**
 * String centres across a line where neighbours may form courses, their strings `pairGap` apart. `equal-gaps` leaves the
 * same air between the outsides of the courses; `equal-centres` lays the middles of the courses evenly, whatever their
 * strings' thickness. Single strings throughout give `stringPositions`. Codes as there, and strings.pair when a pair
 * overlaps.
 */
export const coursePositions = (args: CoursePositionsArguments): Result<readonly number[]> => {
  const { courses, pairGap, diameters } = args;
  const groups = grouped(courses, diameters);
  const overlap = groups.some(({ diameters: pair }) =>
    pair.some((each, index) => index > 0 && (each + (pair[index - 1] ?? 0)) / 2 >= pairGap),
  );
  if (overlap) return fail('pairGap', 'strings.pair', 'The strings of a pair touch: set them farther apart.');
  const widths = widthsOf(groups, args);
  const centres = stringPositions({ ...args, diameters: widths });
  if (!centres.ok) return centres;
  return ok(
    groups.flatMap((group, index) => {
      const centre = centres.value[index] ?? 0;
      const first =
        args.rule === 'equal-gaps'
          ? centre + ((widths[index] ?? 0) - (group.diameters[0] ?? 0)) / 2
          : centre + ((group.diameters.length - 1) * pairGap) / 2;
      return group.diameters.map((_, place) => first - place * pairGap);
    }),
  );
};
