import { REBATE_LIMITS, type RebateFinding, rebateAdvice, rebateDepth } from '../../../core/budget/rebateAdvice';
import { showArea } from '../../../core/sheets/parts/finish/showArea';
import { chooseRebate } from '../../../store/commands/finish/chooseRebate';
import { FieldGroup } from '../../fields/FieldGroup';
import { FieldRow } from '../../fields/FieldRow';
import { More } from '../../fields/More';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { GlueRow } from '../glue/GlueRow';
import { fine } from '../reading/fine';
import { FinishSteps } from './FinishSteps';
import { RimCosts } from './RimCosts';
import './cards.css';

const LIMITS = ['rimNew', 'rebateOver', 'rebateDeepest'] as const;

/** A finding in words. */
const findingWords = ({ code, value, limit }: RebateFinding, show: (mm: number) => string): string => {
  const [is, held] = [value === null ? '' : show(value), limit === null ? '' : show(limit)];
  switch (code) {
    case 'none':
      return 'Glued to the very edge: nothing is left under the rim.';
    case 'rebate-bare':
      return `No finish is left under the rim, yet the bridge is rebated by ${is}: nothing holds there, and it shows as a gap.`;
    case 'repair-edge':
      return `A repair is glued to the very edge: ${is} is left under the rim.`;
    case 'rim-wide':
      return `${is} left under the rim with no rebate: from ${held} on bridges have lifted.`;
    case 'rim-over-new':
      return `${is} left under the rim: up to ${held} is usual for new work.`;
    case 'read-film':
      return 'Measure the film: without it nobody can tell whether the rebate clears it.';
    case 'too-shallow':
      return `The rebate is ${is} deep: the bridge would sit on the film and not on its glue. ${held} clears it.`;
    case 'too-deep':
      return `The rebate is ${is} deep: over ${held} it shows as a gap.`;
    case 'too-narrow':
      return `The rebate is ${is} wide, the rim ${held}: the wood beside it would stand on the film.`;
    case 'fits':
      return `${is} against ${held}: as it should be.`;
  }
};

const WORD = { good: 'Good', look: 'Look', read: 'Read' } as const;

/** The finish under the bridge: what is left, what that costs, how it comes off. */
export function FinishCard() {
  const { actions } = useServices().store;
  const project = useStore((state) => state.project);
  const areas = useStore((state) => state.areas);
  const { style, bare } = useLengths();
  const { rim } = project.bridge;
  const rebate = project.build?.rebate ?? null;
  const film = project.build?.film ?? null;
  const repair = project.repair !== null;
  const findings = rebateAdvice({ film, rim, rebate, repair }, project.limits);
  return (
    <FieldGroup
      id="group-finish"
      title="Finish under the bridge"
      hint="Finish that is left under the rim holds no glue: it is what lifting bridges are most often blamed on."
    >
      <FieldRow path="bridge.rim" />
      {areas?.ok && (
        <p className="card-figure">
          It takes {showArea(areas.value.underRim, style.unit)},{' '}
          <strong>{(areas.value.shareLost * 100).toFixed(0)} %</strong> of the glue area;{' '}
          {showArea(areas.value.glue, style.unit)} are glued.
        </p>
      )}
      <RimCosts />
      <ul className="card-checks">
        {findings.map((finding) => (
          <li key={finding.code} data-verdict={finding.verdict}>
            <strong>{WORD[finding.verdict]}.</strong> {findingWords(finding, (mm) => fine(mm, style))}
          </li>
        ))}
      </ul>
      <GlueRow
        path="build.film"
        usual="not read"
        note={
          film === null
            ? 'Lacquer is often about 0.006 in, 0.15 mm: frets.com, razor blade scraping.'
            : `A rebate of ${fine(rebateDepth(film, project.limits), style)} clears it: film and a little.`
        }
      />
      <label className="check">
        <input
          type="checkbox"
          checked={rebate !== null}
          onChange={({ target }) =>
            actions.change(target.checked ? 'Rebate under the rim' : 'No rebate under the rim', (before) =>
              chooseRebate(before, target.checked),
            )
          }
        />
        <span>Rebate under the rim, so that the film can stay there</span>
      </label>
      {rebate !== null && (
        <>
          <FieldRow path="build.rebate.width" />
          <FieldRow path="build.rebate.depth" />
        </>
      )}
      <More summary="Limits, with their sources">
        {LIMITS.map((name) => (
          <FieldRow
            key={name}
            path={`limits.${name}`}
            usual={style.unit === 'mm' ? REBATE_LIMITS[name].value.toFixed(2) : bare(REBATE_LIMITS[name].value)}
            note={`Usual ${fine(REBATE_LIMITS[name].value, style)}: ${REBATE_LIMITS[name].source}.`}
          />
        ))}
        <FieldRow
          path="limits.rim"
          usual={bare(REBATE_LIMITS.rim.value)}
          note={`Usual ${fine(REBATE_LIMITS.rim.value, style)}: ${REBATE_LIMITS.rim.source}.`}
        />
      </More>
      <FinishSteps />
    </FieldGroup>
  );
}
