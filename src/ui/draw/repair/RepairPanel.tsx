import type { Repair } from '../../../core/document/repairTypes';
import { REPAIR_LIMITS } from '../../../core/repair/repairLimits';
import { More } from '../../fields/More';
import { LimitRow } from '../../measure/LimitRow';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { FormerFootprintFields } from './FormerFootprintFields';
import { FormerHoleFields } from './FormerHoleFields';
import { FormerSlotFields } from './FormerSlotFields';
import { fillWords } from './fillWords';
import { fine } from './fineLengths';
import { MatchTable } from './MatchTable';
import { matchWords } from './matchWords';
import { OverlapTable } from './OverlapTable';
import { Reasons } from './Reasons';
import { ShowingTable } from './ShowingTable';
import './repair.css';

/** The old bridge, and what the new one leaves of it. */
export function RepairPanel({ repair }: { readonly repair: Repair }) {
  const around = useStore((state) => state.around);
  const { style, withUnit } = useLengths();
  const { unit } = style;
  const found = around?.repair ?? null;
  const showFine = (mm: number): string => `${fine(mm, unit)}${unit === 'mm' ? ' mm' : '″'}`;
  const { place = null, match = null, areas = null, overlaps = null } = found ?? {};
  const known = areas?.ok ? areas.value : null;
  return (
    <div className="repair">
      <h3>Old footprint</h3>
      <FormerFootprintFields footprint={repair.footprint} />
      <ShowingTable areas={known} />
      <Reasons of={place} />
      {place?.ok && <Reasons of={areas} />}
      <h3>Old pin holes</h3>
      <FormerHoleFields holes={repair.holes} />
      {match?.ok && (
        <>
          <MatchTable match={match.value} />
          <p>{matchWords(match.value, showFine)}</p>
        </>
      )}
      {place?.ok && <Reasons of={match} />}
      <h3>Old slot</h3>
      <FormerSlotFields slot={repair.slot} />
      {overlaps?.ok && <OverlapTable overlaps={overlaps.value} />}
      {repair.slot !== null && <p>{fillWords(repair.slot, known?.fill ?? null, withUnit)}</p>}
      <More summary="Limits of the repair">
        <LimitRow
          name="holeOff"
          usual={fine(REPAIR_LIMITS.holeOff.value, unit)}
          source={REPAIR_LIMITS.holeOff.source}
        />
        <LimitRow name="showing" usual={String(REPAIR_LIMITS.showing.value)} source={REPAIR_LIMITS.showing.source} />
      </More>
    </div>
  );
}
