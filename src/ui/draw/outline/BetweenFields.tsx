import { useState } from 'react';
import type { Anchor, MeasuredWay } from '../../../core/document/dimensionTypes';
import { anchorWords } from '../../../core/drawing/measure/anchorPlace';
import { anchorsOf } from '../../../core/drawing/measure/anchorsOf';
import { measuredOf, wantedWords } from '../../../core/drawing/measure/measuredOf';
import { measuredFigure, measuredWords } from '../../../core/drawing/measure/measuredWords';
import { partsWithEdge } from '../../../core/drawing/measure/partEdge';
import { PICKS_WANTED } from '../../../core/drawing/measure/picksWanted';
import { wantedOf } from '../../../core/drawing/measure/wantedOf';
import { pinDimension } from '../../../store/commands/dimensions/pinDimension';
import type { MeasureKind } from '../../../store/types';
import { FieldGroup } from '../../fields/FieldGroup';
import { SelectRow } from '../../fields/SelectRow';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';

const KINDS = [
  { value: 'distance', label: 'a distance' },
  { value: 'angle', label: 'an angle' },
  { value: 'gap', label: 'edge to edge' },
] as const;
const WAYS = [
  { value: 'straight', label: 'straight' },
  { value: 'across', label: 'across the centreline' },
  { value: 'along', label: 'along the centreline' },
] as const;
const PLACES: Readonly<Record<MeasureKind, readonly string[]>> = {
  distance: ['From', 'To'],
  angle: ['From', 'Corner', 'To'],
  gap: ['From the edge of', 'To the edge of'],
};
const NOTHING = { value: '', label: 'not chosen yet' };

const keyOf = (anchor: Anchor | undefined): string =>
  anchor === undefined ? '' : anchor.kind === 'part' ? `${anchor.part}|${anchor.feature}` : 'point';

/** What lies between two places or three, chosen here or pressed in the drawing. */
export function BetweenFields() {
  const { actions } = useServices().store;
  const { measure, picks } = useStore((state) => state.handwork);
  const { bridge, slot } = useStore((state) => state.derived);
  const drawn = useStore((state) => state.project.bridge.outline.kind === 'drawn');
  const { withUnit } = useLengths();
  const [way, setWay] = useState<MeasuredWay>('straight');
  if (!bridge.ok || !slot.ok) return null;

  const anchors: readonly Anchor[] =
    measure === 'gap'
      ? partsWithEdge(bridge.value).map((part) => ({ kind: 'part', part, feature: 'edge' }))
      : anchorsOf(bridge.value, slot.value, drawn).map(({ anchor }) => anchor);
  const choices = anchors.map((anchor) => ({
    value: keyOf(anchor),
    label: measure === 'gap' && anchor.kind === 'part' ? anchor.part : anchorWords(anchor),
  }));
  const shown = (pick: Anchor | undefined): string => {
    const part = pick?.kind === 'part' ? pick.part : undefined;
    return measure === 'gap' ? (part === undefined ? '' : `${part}|edge`) : keyOf(pick);
  };
  const put = (place: number, value: string): void => {
    const anchor = anchors.find((each) => keyOf(each) === value);
    if (anchor !== undefined) actions.setHandwork({ picks: Object.assign([...picks], { [place]: anchor }) });
  };
  const wanted = picks.length < PICKS_WANTED[measure] ? null : wantedOf(measure, picks, way);
  const measured = wanted && measuredOf(wanted, bridge.value, slot.value);
  const pin = (): void => {
    if (wanted === null || measured === null) return;
    const figure = measuredFigure(measured, way, withUnit);
    actions.change(`Dimension pinned: ${figure}, ${wantedWords(wanted)}`, (project) => pinDimension(project, wanted));
  };

  return (
    <FieldGroup title="Distance between" hint="Press two places in the drawing, or choose them here.">
      <SelectRow
        label="Measure"
        value={measure}
        choices={KINDS}
        choose={(value) => actions.setHandwork({ measure: value as MeasureKind, picks: [] })}
      />
      {PLACES[measure].map((label, place) => (
        <SelectRow
          key={label}
          label={label}
          value={shown(picks[place])}
          choices={[
            ...(picks[place] === undefined ? [NOTHING] : []),
            ...(keyOf(picks[place]) === 'point' ? [{ value: 'point', label: 'a point of the drawing' }] : []),
            ...choices,
          ]}
          choose={(value) => put(place, value)}
        />
      ))}
      <p className="between-answer" aria-live="polite">
        {measured === null ? (
          wanted === null ? (
            'Nothing is measured yet.'
          ) : (
            'Between these there is nothing to measure.'
          )
        ) : (
          <strong>{measuredWords(measured, withUnit)}</strong>
        )}
      </p>
      {measured !== null && measure === 'distance' && (
        <SelectRow
          label="Pinned as the distance"
          value={way}
          choices={WAYS}
          choose={(value) => setWay(value as MeasuredWay)}
        />
      )}
      <div className="button-row">
        {measured !== null && (
          <button type="button" onClick={pin}>
            Pin it to the drawing
          </button>
        )}
        <button type="button" onClick={() => actions.setHandwork({ tool: 'move', picks: [] })}>
          Done measuring
        </button>
      </div>
    </FieldGroup>
  );
}
