import type { FigureSource } from './stringSetTypes';

/** Mass and core of one steel string or phosphor-bronze wound string. */
export interface SteelGauge {
  /** Outside diameter, in. */
  readonly gauge: number;
  readonly wound: boolean;
  /** Unit weight of the whole string, lb/in. */
  readonly unitWeight: number;
  readonly weightSource: FigureSource;
  /** Core diameter, in. */
  readonly core: number;
  readonly coreSource: FigureSource;
}

const memory = (more: string): FigureSource => ({
  standing: 'from memory',
  says: `unit weight as string makers' charts give it, from memory${more}`,
});
const CONFIRMED = memory('; agrees within 0.1 lb with a tension chart printed in Acoustic Guitar, December 2000');
const SEEN = memory('; most of the row agrees with figures seen elsewhere');
const UNSEEN = memory('; seen nowhere else');
const DENSITY: FigureSource = {
  standing: 'estimated',
  says: 'from the diameter and 0.2820 lb/in³, the one density that the charts’ plain strings share',
};
const SOLID: FigureSource = { standing: 'computed', says: 'plain string: the core is the string' };
const LIGHT_SET: FigureSource = {
  standing: 'published',
  says: 'core sizes published for a light set (osthoffguitars.com); which gauge each belongs to is estimated',
};
const ESTIMATE: FigureSource = {
  standing: 'estimated',
  says: 'between the published cores of a light set; measure yours: 0.001 in is 0.3 to 0.5 mm of compensation',
};

const plain = (gauge: number, unitWeight: number, weightSource: FigureSource): SteelGauge => ({
  gauge,
  wound: false,
  unitWeight,
  weightSource,
  core: gauge,
  coreSource: SOLID,
});
const wound = (
  gauge: number,
  unitWeight: number,
  weightSource: FigureSource,
  core: number,
  coreSource: FigureSource,
): SteelGauge => ({ gauge, wound: true, unitWeight, weightSource, core, coreSource });

/** Steel plain and phosphor-bronze wound strings, lightest first. */
export const STEEL_GAUGES: readonly SteelGauge[] = [
  plain(0.008, 0.282 * (Math.PI / 4) * 0.008 ** 2, DENSITY),
  plain(0.01, 0.00002215, SEEN),
  plain(0.011, 0.0000268, UNSEEN),
  plain(0.012, 0.0000319, UNSEEN),
  plain(0.013, 0.00003744, SEEN),
  plain(0.014, 0.00004342, CONFIRMED),
  plain(0.015, 0.00004984, UNSEEN),
  plain(0.016, 0.00005671, CONFIRMED),
  plain(0.017, 0.00006402, SEEN),
  wound(0.022, 0.00009876, SEEN, 0.0125, ESTIMATE),
  wound(0.023, 0.00010801, SEEN, 0.0125, ESTIMATE),
  wound(0.024, 0.00011682, SEEN, 0.013, LIGHT_SET),
  wound(0.026, 0.0001364, SEEN, 0.0135, ESTIMATE),
  wound(0.03, 0.0001866, SEEN, 0.0145, ESTIMATE),
  wound(0.032, 0.00021018, SEEN, 0.015, LIGHT_SET),
  wound(0.035, 0.00025365, SEEN, 0.0155, ESTIMATE),
  wound(0.039, 0.00031124, SEEN, 0.0155, ESTIMATE),
  wound(0.042, 0.00036722, SEEN, 0.016, LIGHT_SET),
  wound(0.045, 0.00041751, SEEN, 0.0165, ESTIMATE),
  wound(0.047, 0.00045289, CONFIRMED, 0.0165, ESTIMATE),
  wound(0.052, 0.00055223, UNSEEN, 0.0175, ESTIMATE),
  wound(0.053, 0.00056962, UNSEEN, 0.0175, LIGHT_SET),
  wound(0.056, 0.00063477, UNSEEN, 0.018, ESTIMATE),
];
