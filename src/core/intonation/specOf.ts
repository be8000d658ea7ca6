import type { InstrumentString } from '../document/types';
import type { StringSpec } from './types';

/** The string as the model needs it. */
export const specOf = (string: InstrumentString): StringSpec => ({
  name: string.name,
  frequency: string.frequency,
  elastic: string.elastic.kind === 'core' ? { ...string.elastic, massPerLength: string.massPerLength } : string.elastic,
});
