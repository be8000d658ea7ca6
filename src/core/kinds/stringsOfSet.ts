import type { InstrumentString } from '../document/types';
import { STRING_SETS } from '../intonation/stringSets';
import type { FigureSource, SetString } from '../intonation/stringSetTypes';

const told = (what: string, { standing, says }: FigureSource): string => `${what}: ${standing}, ${says}`;

const sourceOf = ({ sources }: SetString): string =>
  [
    told('gauge', sources.diameter),
    told('mass', sources.massPerLength),
    told('stretch and bending', sources.elastic),
  ].join('; ');

/** κ, B0 and where they were measured; or the core, whose mass is that of the whole string. */
const elasticOf = ({ elastic }: SetString): InstrumentString['elastic'] =>
  elastic.kind === 'core'
    ? {
        kind: 'core',
        coreDiameter: elastic.coreDiameter,
        coreShape: elastic.coreShape,
        modulus: elastic.modulus,
      }
    : elastic;

/** The strings of a set as a project keeps them: string 1 is "s1". Empty when there is no such set. */
export const stringsOfSet = (setId: string): readonly InstrumentString[] =>
  (STRING_SETS.find(({ id }) => id === setId)?.strings ?? []).map((string, index) => ({
    id: `s${index + 1}`,
    course: string.course,
    name: string.name,
    frequency: string.frequency,
    diameter: string.diameter,
    wound: string.wound,
    massPerLength: string.massPerLength,
    elastic: elasticOf(string),
    source: sourceOf(string),
  }));
