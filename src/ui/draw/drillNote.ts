import { nearestDrills } from '../../core/drills/nearestDrills';
import { MM_PER_INCH } from '../../core/units/mmPerInch';
import { withSign } from '../withSign';

/** Half a step of the coarsest family, 1/64 in: a family whose nearest drill is farther off has none of that size. */
const FARTHEST = MM_PER_INCH / 128;

/** A space at which no line breaks. */
const KEEP_TOGETHER = '\u00a0';

const THOUSANDTHS = 1000 / MM_PER_INCH;

/**
 * The drills nearest to a hole, each with how much larger it is, in mm or thousandths of an inch:
 * "Nearest drills: 3/16 in (0.00), #12 (+0.04), 4.8 mm (+0.04)".
 */
export const drillNote = (diameter: number, unit: 'mm' | 'in'): string => {
  const offBy = (mm: number): string =>
    unit === 'mm' ? withSign(mm, Math.abs(mm).toFixed(2)) : withSign(mm, (Math.abs(mm) * THOUSANDTHS).toFixed(1));
  const near = nearestDrills(diameter)
    .filter(({ difference }) => Math.abs(difference) <= FARTHEST)
    .map(({ name, difference }) => `${name} (${offBy(difference)})`.replaceAll(' ', KEEP_TOGETHER));
  return `Nearest drills${unit === 'mm' ? '' : ', thousandths'}: ${near.join(', ')}`;
};
