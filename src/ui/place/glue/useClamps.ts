import { useMemo } from 'react';
import type { Point } from '../../../core/geom/types';
import { type ClampPlace, clampPlaces } from '../../../core/glue/clampPlaces';
import { newGlue } from '../../../core/glue/newGlue';
import { proposedClamps } from '../../../core/glue/proposedClamps';
import { useStore } from '../../useStore';

interface Clamps {
  /** Footprint frame, the first tightened first; none while there is no bridge. */
  readonly clamps: readonly Point[];
  /** Not yet the maker's own. */
  readonly proposed: boolean;
  readonly places: readonly ClampPlace[];
  /** How far they reach into the body, mm. */
  readonly reach: number;
}

/** The clamps of this bridge, as the maker placed them or as proposed. */
export const useClamps = (): Clamps => {
  const { bridge } = useStore((state) => state.derived);
  const body = useStore((state) => state.around?.body?.place ?? null);
  const plan = useStore((state) => state.project.build?.glue ?? null);
  return useMemo(() => {
    const { clamps: own, reach } = plan ?? newGlue();
    if (!bridge.ok) return { clamps: [], proposed: true, places: [], reach };
    const { front, footprint } = bridge.value;
    const clamps = own ?? proposedClamps(footprint.outline).map(({ x, y }) => ({ x, y: y - front }));
    return { clamps, proposed: own === null, places: clampPlaces(clamps, bridge.value, body), reach };
  }, [bridge, body, plan]);
};
