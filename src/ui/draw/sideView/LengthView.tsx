import { useMemo } from 'react';
import { sideLength } from '../../../core/drawing/sideView/sideLength';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { EditablePicture } from './EditablePicture';
import { useSide } from './useSide';

/** The bridge on the top, seen along the strings, with the gap beneath it. */
export function LengthView() {
  const side = useSide();
  const bridge = useStore((state) => state.project.bridge);
  const pickup = useStore((state) => state.project.height.pickup);
  const hand = useStore((state) => state.project.instrument.hand);
  const saddle = useStore((state) => state.derived.saddle);
  const { style } = useLengths();
  const fit = side?.fit?.ok ? side.fit.value : null;
  const blank = side?.blank.ok ? side.blank.value : null;
  const picture = useMemo(() => {
    if (fit === null || !saddle.ok) return null;
    return sideLength({ bridge, height: { pickup }, fit, blank, slope: saddle.value.slope, hand }, style);
  }, [bridge, pickup, fit, blank, saddle, hand, style]);
  return picture === null ? null : <EditablePicture picture={picture} />;
}
