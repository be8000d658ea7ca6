import { caulPasses } from '../../../core/body/caulPasses';
import { bodyLimit } from '../../../core/checks/body/bodyLimits';
import { caulShape } from '../../../core/sheets/parts/caul/caulShape';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';

/** Whether the caul of the printed sheet goes in through the soundhole. */
export function CaulNote() {
  const { body, limits } = useStore((state) => state.project);
  const place = useStore((state) => state.around?.body?.place ?? null);
  const { bridge } = useStore((state) => state.derived);
  const { withUnit } = useLengths();
  if (!bridge.ok) return null;
  if (body === null || place === null || body.soundhole === null)
    return (
      <p className="field-note">
        Whether clamps and caul get there: enter braces, plate and soundhole on Draw, under Beneath and around.
      </p>
    );
  const { across, along } = caulShape(bridge.value.footprint.outline, place, limits);
  const { value: thick } = bodyLimit('caulThickness', limits);
  const narrow = Math.min(across, along);
  const size = `Inside caul ${withUnit(across)} × ${withUnit(along)}, ${withUnit(thick)} thick`;
  return caulPasses(body.soundhole, narrow, thick) ? (
    <p className="field-note">{size}: goes through the soundhole end first.</p>
  ) : (
    <p className="field-caution">
      {size}: does not go through the soundhole. Make it narrower, thinner, or in two pieces.
    </p>
  );
}
