import type { Project } from '../document/types';
import { projectFrom } from './projectFrom';
import { STEEL_STRING } from './steelString';

/** The instrument that a first start shows: invented, so that every figure on the screen means something. */
export const demoProject = (id: string, now: string): Project => {
  const project = projectFrom(STEEL_STRING, id, now);
  return {
    ...project,
    about: { ...project.about, name: 'Wren 14' },
    instrument: {
      ...project.instrument,
      widths: { nut: 46, twelfth: 57, last: 61 },
      scale: {
        from: 'readings',
        entered: 632,
        readings: [316, 316.1, 315.9].map((value) => ({ fret: 12, value })),
      },
    },
  };
};
