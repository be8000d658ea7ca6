import type { InstrumentString } from '../../core/document/types';

/** The same strings with their courses numbered from 1 (treble) without a gap; neighbours of one course stay together. */
export const numberCourses = (strings: readonly InstrumentString[]): readonly InstrumentString[] => {
  let course = 0;
  return strings.map((string, index) => {
    if (string.course !== strings[index - 1]?.course) course += 1;
    return { ...string, course };
  });
};
