import { REBATE_LIMITS, type RebateFinding, rebateAdvice } from '../../../core/budget/rebateAdvice';
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
import './cards.css';

const LIMITS = ['rimNew', 'rebateOver', 'rebateDeepest'] as const;

/** A finding in words. */
const findingWords = ({ code, value, limit }: RebateFinding, show: (mm: number) => string): string => {
  const [is, held] = [value === null ? '' : show(value), limit === null ? '' : show(limit)];
  switch (code) {
    case 'none':
      return 'Glued to the very edge: nothing is left under the rim.';
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
  const repair = project.repair !== null;
  const findings = rebateAdvice({ film: project.build?.film ?? null, rim, rebate, repair }, project.limits);
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
      <ul className="card-checks">
        {findings.map((finding) => (
          <li key={finding.code} data-verdict={finding.verdict}>
            <strong>{WORD[finding.verdict]}.</strong> {findingWords(finding, (mm) => fine(mm, style))}
          </li>
        ))}
      </ul>
      <GlueRow path="build.film" usual="not read" />
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
            note={`usual ${fine(REBATE_LIMITS[name].value, style)}: ${REBATE_LIMITS[name].source}`}
          />
        ))}
        <FieldRow
          path="limits.rim"
          usual={bare(REBATE_LIMITS.rim.value)}
          note={`usual ${fine(REBATE_LIMITS.rim.value, style)}: ${REBATE_LIMITS.rim.source}`}
        />
      </More>
      <h3>Scoring and scraping</h3>
      <ol className="card-steps">
        <li>
          Bridge pinned in its place. A line round it, or the template cut inside the line, so that the blade never
          follows the bridge.
        </li>
        <li>
          Score through the film and no deeper: light passes, away from the holding hand. A cut into spruce starts a
          crack.
        </li>
        <li>Bridge off. Score the line of the rim, inside the first.</li>
        <li>
          Lift the film from the middle outward: scraper or chisel held flat, with the grain. No sanding across the
          line.
        </li>
        <li>
          Bare wood tried dry: no shine. Freshen both faces within a quarter of an hour of the glue
          (classicalguitardelcamp.com).
        </li>
        <li>Tape off before the glue hardens, folded back on itself, slowly.</li>
      </ol>
      <h3>To doubt</h3>
      <ul className="plain">
        <li>
          Fresh or soft films, shellac and oil: some do not bear any tape (moonlightluthiers.com). Try it where it does
          not show.
        </li>
        <li>Tape that is not low-tack, or has been on for days or in the sun.</li>
        <li>Film that chips when scored: warm the room, score twice as lightly.</li>
        <li>Strippers and solvents creep under the line: not here.</li>
      </ul>
      <p className="field-caution">
        Blades: fresh, cut away from you, the body of the instrument held. Finish dust and solvents: ventilation,
        gloves, a respirator; the label and local rules come first.
      </p>
    </FieldGroup>
  );
}
