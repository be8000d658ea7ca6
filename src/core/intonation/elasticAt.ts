import { coreSection } from './coreSection';
import { stringTension } from './stringTension';
import type { StringSpec } from './types';

/** Stretch and bending of an open string, both without unit. */
export interface ElasticState {
  /** κ = E·A/T0: relative rise of tension per relative stretch. */
  readonly kappa: number;
  /** B0 = √(E·I/T0)/L0: relative rise of pitch by bending, first order. */
  readonly b0: number;
}

const NEWTON_PER_MM2_IN_GPA = 1000;

/**
 * κ and B0 of a string on a given scale, with the open length that the setback being tried gives.
 *
 * 'core': κ = E·A/T0 and B0 = √(E·I/T0)/L0, with T0 = mass·(2·L0·f)².
 * 'measured': held while the setback varies; measured elsewhere, carried by κ' = κ·(L·f)²/(L'·f')² and
 * B0' = B0·L²·f/(L'²·f'), which is what constant E·A, E·I and mass give.
 * @param scaleLength of the instrument, mm
 * @param openLength open sounding length, mm
 * @throws RangeError when a core's figure is not a number above 0
 */
export function elasticAt(string: StringSpec, scaleLength: number, openLength: number): ElasticState {
  const { elastic, frequency } = string;
  if (elastic.kind === 'core') {
    const { area, secondMoment } = coreSection(elastic.coreDiameter, elastic.coreShape);
    const perTension =
      (elastic.modulus * NEWTON_PER_MM2_IN_GPA) / stringTension(elastic.massPerLength, openLength, frequency);
    return { kappa: perTension * area, b0: Math.sqrt(perTension * secondMoment) / openLength };
  }
  if (elastic.at === undefined) return elastic;
  const lengths = elastic.at.scaleLength / scaleLength;
  const pitches = elastic.at.frequency / frequency;
  return { kappa: elastic.kappa * (lengths * pitches) ** 2, b0: elastic.b0 * lengths * lengths * pitches };
}
