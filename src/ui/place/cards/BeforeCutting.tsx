import { useMemo } from 'react';
import { type BudgetRow, placeBudget } from '../../../core/budget/placeBudget';
import { centsPerMm } from '../../../core/intonation/centsPerMm';
import { dropOf } from '../../../core/placement/reading/readCase';
import { FieldGroup } from '../../fields/FieldGroup';
import { FieldRow } from '../../fields/FieldRow';
import { More } from '../../fields/More';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { fine } from '../reading/fine';
import { usualSize } from './usualSize';
import './cards.css';

/** Coverage: two standard deviations. */
const COVER = 2;

/** How far the errors of the work can carry the bridge, and which to improve. */
export function BeforeCutting() {
  const project = useStore((state) => state.project);
  const derived = useStore((state) => state.derived);
  const { style } = useLengths();
  const { saddle, bridge, placement, scale } = derived;
  const budget = useMemo(() => {
    if (!saddle.ok || !bridge.ok || !placement.ok || !scale.ok) return null;
    const [one, other] = bridge.value.locating;
    const xs = bridge.value.points.map(({ at }) => at.x);
    return placeBudget(
      {
        height: dropOf(project).height,
        length: Math.max(...xs) - Math.min(...xs),
        carried: saddle.value.centre - placement.value.squareLine[style.unit].fromNut,
        apart:
          one === undefined || other === undefined
            ? 0
            : Math.hypot(one.centre.x - other.centre.x, one.centre.y - other.centre.y),
        reach: Math.max(...saddle.value.strings.map(({ x }) => Math.abs(x))),
        centsPerMm: centsPerMm(scale.value.scaleLength, 12),
      },
      project.doubts,
    );
  }, [project, saddle, bridge, placement, scale, style.unit]);
  if (budget === null) return null;
  const { rows, along, aside, turn, cents, first } = budget;
  const degrees = (radians: number): string => `${((radians * 180) / Math.PI).toFixed(2)}°`;
  const model = saddle.ok ? Math.max(0, ...saddle.value.strings.map((string) => string.model?.sigma ?? 0)) : 0;
  return (
    <FieldGroup
      id="group-budget"
      title="Before wood is cut"
      hint="How far the work itself can carry the bridge, from what you measure to the drilled hole."
    >
      <p className="card-figure">
        Fore and aft ±{fine(COVER * along, style)}, <strong>±{(COVER * cents).toFixed(1)} cents</strong>; sideways ±
        {fine(COVER * aside, style)}; turned ±{degrees(COVER * turn)}.
      </p>
      <p className="hint">
        Two standard deviations, which hold in 95 of 100; causes taken as independent (JCGM 100, 5.1.2).
        {model > 0 && ` For proportion: what the strings want is itself known to ±${fine(COVER * model, style)}.`}
      </p>
      <p>
        <strong>Improve first: {first.row.source.label.toLowerCase()}.</strong> {first.row.source.remedy} Halved, ±
        {(COVER * cents).toFixed(1)} becomes ±{(COVER * first.left).toFixed(1)} cents.
      </p>
      <table className="figures loose small-figures budget">
        <caption>What each does by itself, two standard deviations</caption>
        <thead>
          <tr>
            <th scope="col">Cause</th>
            <th scope="col">Fore and aft</th>
            <th scope="col">Cents</th>
            <th scope="col">Share</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <BudgetLine key={row.source.id} row={row} />
          ))}
        </tbody>
      </table>
      <More summary="How large each error is at your bench">
        {rows.map(({ source }) => {
          const usual = usualSize(source, style);
          return (
            <FieldRow
              key={source.id}
              path={`doubts.${source.id}`}
              usual={usual}
              note={`usual ${usual}: ${source.source}`}
            />
          );
        })}
      </More>
    </FieldGroup>
  );
}

function BudgetLine({ row: { source, along, cents, share } }: { readonly row: BudgetRow }) {
  const { style } = useLengths();
  return (
    <tr>
      <th scope="row">{source.label}</th>
      <td>{fine(COVER * along, style)}</td>
      <td>{(COVER * cents).toFixed(1)}</td>
      <td>
        <span className="share" aria-hidden="true">
          <span style={{ width: `${Math.round(share * 100)}%` }} />
        </span>
        {Math.round(share * 100)} %
      </td>
    </tr>
  );
}
