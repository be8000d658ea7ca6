import type { Point } from '../../../core/geom/types';
import { REACH_SOURCE, USUAL_REACH } from '../../../core/glue/newGlue';
import { CLAMPS_SOURCE } from '../../../core/glue/proposedClamps';
import { setClamps } from '../../../store/commands/glue/setClamps';
import { useChange } from '../../draw/repair/useChange';
import { More } from '../../fields/More';
import { ItemsSvg } from '../../items/ItemsSvg';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { CaulNote } from './CaulNote';
import { ClampsTable } from './ClampsTable';
import { clampPicture } from './clampPicture';
import { clampWhere } from './clampWords';
import { GlueRow } from './GlueRow';
import { useClamps } from './useClamps';
import { widestGap } from './widestGap';

/** Where the clamps go, in which order, and whether they get there. */
export function ClampRows() {
  const { bridge, slot } = useStore((state) => state.derived);
  const { clamps, proposed, places } = useClamps();
  const body = useStore((state) => state.around?.body?.place ?? null);
  const hand = useStore((state) => state.project.instrument.hand);
  const { bare, withUnit } = useLengths();
  const change = useChange();
  if (!bridge.ok) return null;
  const set = (label: string, to: readonly Point[] | null): void => change(label, (project) => setClamps(project, to));
  const { front, footprint } = bridge.value;
  const { width, height, items } = clampPicture({
    bridge: bridge.value,
    slot: slot.ok ? slot.value : null,
    body,
    clamps: places.map(({ at }) => at),
    hand,
  });
  const told = clamps.map((clamp, index) => `${index + 1}: ${clampWhere(clamp, withUnit)}`).join('; ');
  const more = (): void => {
    const { x, y } = widestGap(
      places.map(({ at }) => at),
      footprint.outline,
    );
    set('One clamp more', [...clamps, { x, y: y - front }]);
  };
  return (
    <>
      <h3>Clamps, in order of tightening</h3>
      <ItemsSvg
        className="plot clamp-picture"
        width={width}
        height={height}
        items={items}
        label={`Clamps on the bridge, nut side up, in order of tightening. ${told}.`}
      />
      <ClampsTable set={set} />
      {proposed && <p className="field-note">As proposed. Source: {CLAMPS_SOURCE}.</p>}
      <GlueRow
        path="build.glue.reach"
        usual={bare(USUAL_REACH)}
        note={`Usual ${bare(USUAL_REACH)}: ${REACH_SOURCE}.`}
      />
      <div className="buttons">
        <button type="button" onClick={more}>
          One clamp more
        </button>
        {!proposed && (
          <button type="button" onClick={() => set('Clamps as proposed', null)}>
            As proposed
          </button>
        )}
      </div>
      <More summary="Place the clamps by figures">
        {proposed ? (
          <div className="buttons">
            <button type="button" onClick={() => set('Clamps placed by the maker', clamps)}>
              Begin with these places
            </button>
          </div>
        ) : (
          clamps.map((_, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a clamp is its place in the order
            <fieldset key={index} className="clamp-places" aria-label={`Clamp ${index + 1}`}>
              <GlueRow path={`build.glue.clamps.${index}.y`} />
              <GlueRow path={`build.glue.clamps.${index}.x`} />
            </fieldset>
          ))
        )}
      </More>
      <CaulNote />
      <p className="field-caution">
        Snug and even, each in turn, then round again. Too tight dents the top, starves the joint and cracks braces.
        Never a hand inside where a clamp can slip.
      </p>
    </>
  );
}
