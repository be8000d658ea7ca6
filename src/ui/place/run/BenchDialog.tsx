import { useEffect, useId, useRef } from 'react';
import type { RoundStage } from '../../../core/document/buildTypes';
import { useStore } from '../../useStore';
import { StepBox } from './StepBox';
import { StepDetail } from './StepDetail';
import { TimerList } from './timers/TimerList';
import { useAwake } from './useAwake';
import { useRun } from './useRun';

interface BenchDialogProps {
  readonly closed: () => void;
  readonly toReadings: (stage: RoundStage) => void;
}

/** The run over the whole screen, to be read at arm's length and ticked with glue on the hands; open from the start. */
export function BenchDialog({ closed, toReadings }: BenchDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const nextRow = useRef<HTMLLIElement>(null);
  const title = useId();
  const { name } = useStore((state) => state.project.about);
  const { steps, ticked, next, done, rows } = useRun();
  useAwake();
  const toNext = (): void => {
    nextRow.current?.scrollIntoView({ block: 'start' });
    nextRow.current?.querySelector('input')?.focus({ preventScroll: true });
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when it opens
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    toNext();
    return () => shown?.close();
  }, []);
  return (
    <dialog ref={dialog} aria-labelledby={title} className="bench-dialog" onClose={closed}>
      <header>
        <h2 id={title}>At the bench: {name}</h2>
        <p>
          {done} of {steps.length} done
        </p>
        {next !== null && (
          <button type="button" onClick={toNext}>
            To the next step
          </button>
        )}
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
        <TimerList />
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: steps beyond the view are scrolled by keys */}
      <ol className="bench-steps" tabIndex={0} aria-label="Steps">
        {steps.map((step, index) => (
          <li key={step.id} ref={step === next ? nextRow : undefined} data-next={step === next}>
            <StepBox step={step} number={index + 1} at={ticked[step.id]} next={step === next} />
            {ticked[step.id] === undefined && (
              <StepDetail
                step={step}
                rows={rows[step.id] ?? []}
                toReadings={(stage) => {
                  dialog.current?.close();
                  toReadings(stage);
                }}
              />
            )}
          </li>
        ))}
      </ol>
    </dialog>
  );
}
