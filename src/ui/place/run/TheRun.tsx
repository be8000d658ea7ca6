import { useState } from 'react';
import type { RoundStage } from '../../../core/document/buildTypes';
import { chooseSheet } from '../../../store/commands/chooseSheet';
import { useChange } from '../../draw/repair/useChange';
import { FieldGroup } from '../../fields/FieldGroup';
import { useServices } from '../../services';
import { useStore } from '../../useStore';
import { BenchDialog } from './BenchDialog';
import { StepBox } from './StepBox';
import { StepDetail } from './StepDetail';
import { useRun } from './useRun';
import '../glue/glue.css';
import './run.css';

interface TheRunProps {
  /** Leads to where a reading of the place is typed. */
  readonly toReadings: (stage: RoundStage) => void;
}

/** The whole mounting, step by step: ticked as it is done, taken up again where it was left. */
export function TheRun({ toReadings }: TheRunProps) {
  const { actions } = useServices().store;
  const change = useChange();
  const [atBench, setAtBench] = useState(false);
  const [shown, setShown] = useState<string | null>(null);
  const chosen = useStore((state) => state.project.sheets.chosen.includes('worksheet'));
  const { steps, ticked, next, done, rows } = useRun();
  const print = (): void => {
    if (!chosen) change('Print the bench worksheet', (project) => chooseSheet(project, 'worksheet', true));
    actions.setDevice({ station: 'print' });
  };
  return (
    <>
      <FieldGroup id="group-run" title="The run">
        <p className="hint">
          {next === null
            ? `All ${steps.length} steps are done.`
            : `${done} of ${steps.length} done. Next: ${next.title.toLowerCase()}.`}
        </p>
        <div className="buttons">
          <button type="button" className="primary" onClick={() => setAtBench(true)}>
            At the bench …
          </button>
          <button type="button" onClick={print}>
            Print as worksheet
          </button>
        </div>
        <ol className="run-steps">
          {steps.map((step, index) => {
            const open = (shown ?? next?.id) === step.id;
            return (
              <li key={step.id} data-next={step === next}>
                <div className="run-step">
                  <StepBox step={step} number={index + 1} at={ticked[step.id]} next={step === next} />
                  <button
                    type="button"
                    aria-expanded={open}
                    aria-label={`${open ? 'Close' : 'Open'} step ${index + 1}`}
                    onClick={() => setShown(open ? '' : step.id)}
                  >
                    {open ? '−' : '+'}
                  </button>
                </div>
                {open && <StepDetail step={step} rows={rows[step.id] ?? []} toReadings={toReadings} />}
              </li>
            );
          })}
        </ol>
      </FieldGroup>
      {atBench && <BenchDialog closed={() => setAtBench(false)} toReadings={toReadings} />}
    </>
  );
}
