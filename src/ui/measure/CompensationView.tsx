import { useMemo } from 'react';
import { auditLimitsInUse } from '../../core/audit/auditLimitsInUse';
import { plotCompensation } from '../../core/drawing/plots/plotCompensation';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { Picture } from './Picture';

/** Compensation by string with the saddle line and the crown's reach, drawn to scale. */
export function CompensationView() {
  const { saddle, board } = useStore((state) => state.derived);
  const slot = useStore((state) => state.project.bridge.slot);
  const hand = useStore((state) => state.project.instrument.hand);
  const limits = useStore((state) => state.project.limits);
  const { style } = useLengths();
  const plot = useMemo(() => {
    if (!saddle.ok || !board.ok) return null;
    return plotCompensation(saddle.value, slot, auditLimitsInUse(limits).land.value, board.value.octave, style, hand);
  }, [saddle, board, slot, hand, limits, style]);
  return <Picture plot={plot} />;
}
