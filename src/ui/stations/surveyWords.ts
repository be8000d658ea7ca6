import type { ScaleReading } from '../../core/document/types';
import type { ReadingDoubt, SurveyFinding } from '../../core/instrument/surveyTypes';
import { ordinal } from '../../core/units/ordinal';

type Show = (mm: number) => string;

/** Where a survey's ± comes from, in words. */
export const surveyDoubtWords = ({ from, sigma, factor, degreesOfFreedom }: ReadingDoubt, show: Show): string =>
  from === 'rule'
    ? `± in 19 cases of 20, by a rule good to ${sigma.toFixed(2)} mm a reading; more readings narrow it.`
    : `± in 19 cases of 20, by how far the readings stray: ${show(sigma)} each, times ${factor.toFixed(1)} for only ${degreesOfFreedom} to spare.`;

/** "2nd reading to the 12th fret"; the index counts all readings from 0. */
const readingName = (readings: readonly ScaleReading[], index: number): string => {
  const fret = readings[index]?.fret ?? 0;
  const nth = readings.slice(0, index + 1).filter((reading) => reading.fret === fret).length;
  return `${ordinal(nth)} reading to the ${ordinal(fret)} fret`;
};

const fretNames = (frets: readonly number[]): string => frets.map((fret) => `the ${ordinal(fret)}`).join(' or ');

/** What does not fit, and what to do about it. */
export const findingWords = (finding: SurveyFinding, readings: readonly ScaleReading[], show: Show): string => {
  const size = show(Math.abs(finding.off));
  switch (finding.kind) {
    case 'reading':
      return `The ${readingName(readings, finding.index)} is ${size} too ${finding.off > 0 ? 'long' : 'short'} against the others. Read it again.`;
    case 'pair':
      return `The two readings to the ${ordinal(finding.fret)} fret differ by ${size}. Read it a third time.`;
    case 'fret': {
      const side = finding.off > 0 ? 'far from' : 'near';
      const where = `The ${ordinal(finding.fret)} fret sits ${size} too ${side} the nut by the other frets`;
      if (finding.instead.length > 0)
        return `${where}; ${fretNames(finding.instead)} standing wrong would explain it as well. Read more frets to tell.`;
      return finding.readings === 1
        ? `${where}, or the rule slipped: read it again.`
        : `${where}: ${finding.readings} readings agree, so the fret is badly placed.`;
    }
  }
};
