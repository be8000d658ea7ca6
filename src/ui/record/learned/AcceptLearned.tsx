import { firstStringUp } from '../../../core/learning/firstStringUp';
import type { Expectation } from '../../../core/learning/whatToExpect';
import { takeLearned } from '../../../store/commands/stringUp/takeLearned';
import { useServices } from '../../services';
import { useStore } from '../../useStore';
import { useRun } from '../stringUp/useStringUps';
import { dayWords } from '../whenWords';

interface AcceptLearnedProps {
  readonly expected: Expectation;
}

/** The offer to take what was learned into the open plan, and to take it out again. */
export function AcceptLearned({ expected }: AcceptLearnedProps) {
  const { clock } = useServices();
  const run = useRun();
  const { by, learned } = useStore(({ project }) => project.compensation);
  const strung = useStore(({ project }) => firstStringUp(project.build?.stringUps ?? []) !== null);
  const figures = expected.strings.flatMap(({ id, next }) => (next === null ? [] : [[id, next.estimate] as const]));
  const builds = expected.without.length;
  return (
    <div className="accept-learned">
      {figures.length > 0 && (
        <>
          <p>
            Nothing of this is in the plan until you take it. What you take is copied: later instruments change no
            drawing.
          </p>
          {strung && (
            <p className="field-caution">
              This instrument is strung already: take the figures into the model, or into the next instrument, rather.
            </p>
          )}
          <div className="buttons">
            <button
              type="button"
              className={strung ? undefined : 'primary'}
              onClick={() =>
                run(`Taken from ${builds} ${builds === 1 ? 'instrument' : 'instruments'}`, (project) =>
                  takeLearned(project, { byString: Object.fromEntries(figures), builds, accepted: clock.now() }),
                )
              }
            >
              Take these into this plan
            </button>
          </div>
        </>
      )}
      {learned !== null && (
        <p className="learned-taken">
          In this plan: figures from {learned.builds} {learned.builds === 1 ? 'instrument' : 'instruments'}, taken on{' '}
          {dayWords(learned.accepted)}.{' '}
          <button
            type="button"
            onClick={() => run('What was learned taken out', (project) => takeLearned(project, null))}
          >
            Take them out
          </button>
        </p>
      )}
      {by !== 'strings' && (figures.length > 0 || learned !== null) && (
        <p className="hint">
          They count where compensation is by the strings. This plan goes by{' '}
          {by === 'rule' ? 'the rule of thumb' : 'your own figures'}: choose Strings on Measure to have them count.
        </p>
      )}
    </div>
  );
}
