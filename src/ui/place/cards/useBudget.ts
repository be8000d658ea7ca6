import { useMemo } from 'react';
import { type PlaceBudget, placeBudget } from '../../../core/budget/placeBudget';
import { sourcesWithPrint } from '../../../core/budget/sourcesWithPrint';
import { distance } from '../../../core/geom/points';
import { dropOf } from '../../../core/placement/reading/readCase';
import { useBench, useBenchState } from '../../print/proof/useBench';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';

/** How far the work can carry this bridge; null while the bridge is not computed. */
export const useBudget = (): PlaceBudget | null => {
  const project = useStore((state) => state.project);
  const { saddle, bridge, placement } = useStore((state) => state.derived);
  const { profiles, chosen } = useBenchState(useBench());
  const { unit } = useLengths().style;
  return useMemo(() => {
    if (!saddle.ok || !bridge.ok || !placement.ok) return null;
    const [one, other] = bridge.value.locating;
    const xs = bridge.value.points.map(({ at }) => at.x);
    return placeBudget(
      {
        height: dropOf(project).height,
        length: Math.max(...xs) - Math.min(...xs),
        carried: saddle.value.centre - placement.value.squareLine[unit].fromNut,
        apart: one === undefined || other === undefined ? 0 : distance(one.centre, other.centre),
        reach: Math.max(...saddle.value.strings.map(({ x }) => Math.abs(x))),
        centsPerMm: placement.value.centsPerMm,
      },
      project.doubts,
      sourcesWithPrint(profiles.find(({ id }) => id === chosen) ?? null),
    );
  }, [project, saddle, bridge, placement, profiles, chosen, unit]);
};
