import type { Item } from '../../../drawing/types';
import { nearestDrills } from '../../../drills/nearestDrills';
import type { DrillFamily } from '../../../drills/types';
import { MM_PER_INCH } from '../../../units/mmPerInch';
import { cardTable } from '../items/cardTable';
import { fineLength } from '../items/fineLength';
import type { DrillRow } from './drillRows';

const FAMILIES: readonly DrillFamily[] = ['fractional', 'number', 'letter', 'metric'];
/** Half a step of the coarsest family, 1/64 in: a family whose nearest drill is farther off has none of that size. */
const FARTHEST = MM_PER_INCH / 128;

/** How much larger a drill is than the hole asked for, with its sign; "exact" where nothing shows. */
const offBy = (mm: number, unit: 'mm' | 'in'): string => {
  const text = fineLength(Math.abs(mm), unit);
  return Number(text) === 0 ? 'exact' : `${mm < 0 ? '−' : '+'}${text}`;
};

/** Every kind of hole with its count, its diameter and the nearest drill of each family, with how much larger that is. */
export const drillTable = (rows: readonly DrillRow[], unit: 'mm' | 'in'): readonly Item[] =>
  cardTable(
    'drills',
    { x: 0, y: 0 },
    [
      { name: 'hole', width: 46, role: 'heading' },
      { name: 'how many', width: 16, role: 'heading' },
      { name: `diameter, ${unit === 'mm' ? 'mm' : 'inches'}`, width: 27, role: 'key' },
      ...['fraction', 'number', 'letter', 'metric'].map((name) => ({ name, width: 20, role: 'note' as const })),
    ],
    rows.map(({ id, name, where, count, diameter }) => {
      const near = nearestDrills(diameter);
      const drills = FAMILIES.map((family) => {
        const drill = near.find((each) => each.family === family);
        return drill === undefined || Math.abs(drill.difference) > FARTHEST ? null : drill;
      });
      return {
        id,
        cells: [name, `${count}`, fineLength(diameter, unit), ...drills.map((drill) => drill?.name ?? 'none')],
        under: [where, '', '', ...drills.map((drill) => (drill === null ? '' : offBy(drill.difference, unit)))],
      };
    }),
  );
