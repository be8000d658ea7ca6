import type { RoundStage } from '../../../core/document/buildTypes';
import type { RunStep } from '../../../core/run/types';
import type { WorksheetRow } from '../../../core/sheets/parts/worksheet/worksheetRows';
import { useStore } from '../../useStore';
import { GlueRow } from '../glue/GlueRow';
import { StepFigures } from './StepFigures';
import { TimerControl } from './timers/TimerControl';

interface StepDetailProps {
  readonly step: RunStep;
  readonly rows: readonly WorksheetRow[];
  /** Leads to where a reading of the place is typed. */
  readonly toReadings: (stage: RoundStage) => void;
}

/** How a step is done, where the danger is, its figures, readings and clocks. */
export function StepDetail({ step, rows, toReadings }: StepDetailProps) {
  const { doing, cautions, timers, round } = step;
  return (
    <div className="step-detail">
      {doing.map((text) => (
        <p key={text}>{text}</p>
      ))}
      {cautions.map((text) => (
        <p key={text} className="field-caution">
          {text}
        </p>
      ))}
      <StepFigures rows={rows} />
      {round !== null && <RoundLine stage={round} toReadings={toReadings} />}
      {timers.map((what) => (
        <div key={what}>
          <GlueRow path={`build.glue.times.${what}`} usual="on its label" />
          <TimerControl what={what} />
        </div>
      ))}
    </div>
  );
}

const STAGES: Readonly<Record<RoundStage, string>> = {
  dry: 'before tape',
  taped: 'taped',
  wet: 'wet',
  cured: 'cured',
};

/** How often the place was read at this stage, and the way to read it. */
function RoundLine({
  stage,
  toReadings,
}: {
  readonly stage: RoundStage;
  readonly toReadings: StepDetailProps['toReadings'];
}) {
  const rounds = useStore((state) => state.project.build?.rounds);
  const taken = rounds?.filter((each) => each.stage === stage) ?? [];
  const last = taken.at(-1);
  const words =
    last === undefined
      ? `Not read ${STAGES[stage]} yet.`
      : `Read ${STAGES[stage]} ${taken.length === 1 ? 'once' : `${taken.length} times`}; the last place ${last.accepted ? 'was taken as good' : 'was not taken as good'}.`;
  return (
    <p className="step-round">
      {words}{' '}
      <button type="button" onClick={() => toReadings(stage)}>
        Readings, {STAGES[stage]}
      </button>
    </p>
  );
}
