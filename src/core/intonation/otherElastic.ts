import type { InstrumentString, StringElastic } from '../document/types';
import { fail, ok, type Result } from '../result';
import { elasticAt } from './elasticAt';
import { specOf } from './specOf';
import { stringTension } from './stringTension';

/** Kilo: E·A in kN over mm² is GPa. */
const NEWTON_PER_MM2_IN_GPA = 1000;

/**
 * The same string told the other way: from its core as κ and B0 on this scale, or from κ and B0 as the round core that has
 * them: I/A = D²/16 gives D = 4·B0·L/√κ, and E = κ·T0/A. Nothing that the model says of the string changes by it.
 * Code elastic.none when there is no such core.
 */
export const otherElastic = (
  string: InstrumentString,
  scaleLength: number,
  openLength: number,
): Result<StringElastic> => {
  const { kappa, b0 } = elasticAt(specOf(string), scaleLength, openLength);
  if (string.elastic.kind === 'core')
    return ok({ kind: 'measured', kappa, b0, at: { scaleLength, frequency: string.frequency } });
  const diameter = (4 * b0 * openLength) / Math.sqrt(kappa);
  if (!(kappa > 0 && diameter > 0))
    return fail('strings', 'elastic.none', 'A string that neither stretches nor bends has no core.');
  const area = (Math.PI * diameter ** 2) / 4;
  const modulus = (kappa * stringTension(string.massPerLength, openLength, string.frequency)) / area;
  return ok({
    kind: 'core',
    coreDiameter: diameter,
    coreShape: 'round',
    modulus: modulus / NEWTON_PER_MM2_IN_GPA,
  });
};
