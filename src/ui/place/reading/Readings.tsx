import { useMemo } from 'react';
import type { RoundStage } from '../../../core/document/buildTypes';
import type { ReadGroup } from '../../../core/placement/reading/types';
import { beginRound } from '../../../store/commands/place/beginRound';
import { FieldGroup } from '../../fields/FieldGroup';
import { More } from '../../fields/More';
import { SelectRow } from '../../fields/SelectRow';
import { useServices } from '../../services';
import { FreePair } from './FreePair';
import { takeInHand, useInHand } from './inHand';
import { LineRow } from './LineRow';
import { STAGES } from './stageWords';
import { type Place, useAnswer } from './usePlace';

const GROUPS: readonly { readonly group: ReadGroup; readonly title: string }[] = [
  { group: 'along', title: 'Fore and aft, by rule and square' },
  { group: 'stick', title: 'Octave stick' },
  { group: 'margins', title: 'Strings against the board' },
  { group: 'edges', title: 'Straightedge along the board' },
  { group: 'corners', title: 'Fret ends to corners and locating pins' },
  { group: 'compare', title: 'Bass against treble, no rule' },
  { group: 'pins', title: 'Pin row' },
];

/** What was read of the bridge in its place, a box a line. */
export function Readings({ place }: { readonly place: Place }) {
  const { store, clock, newId } = useServices();
  const { stage } = useInHand();
  const { round, lines, front } = place;
  const answer = useAnswer(place, round);
  const residuals = useMemo(
    () => new Map(answer?.ok ? answer.value.residuals.map(({ id, residual }) => [id, residual] as const) : []),
    [answer],
  );
  const quarrel = answer?.ok ? answer.value.quarrel.ids : [];
  const row = (line: Place['lines'][number]) => (
    <LineRow
      key={line.id}
      place={place}
      line={line}
      number={front.includes(line) ? front.indexOf(line) + 1 : null}
      quarrel={quarrel}
      residuals={residuals}
    />
  );
  const read = new Set(round?.readings.map(({ line }) => line) ?? []);
  return (
    <FieldGroup
      id="group-readings"
      title="Read the bridge in its place"
      hint="Any of these, in any order, as often as you like. The first few tell most, in the order that pays; the numbers are in the picture."
    >
      <SelectRow
        label="Read while it is"
        value={stage}
        choices={STAGES}
        choose={(value) => takeInHand({ stage: value as RoundStage, round: null })}
      />
      <ol className="read-lines">{front.map(row)}</ol>
      {GROUPS.map(({ group, title }) => {
        const others = lines.filter((line) => line.group === group && !front.includes(line));
        return others.length === 0 ? null : (
          <More key={group} summary={title} open={others.some(({ id }) => read.has(id))}>
            <ul className="read-lines">{others.map(row)}</ul>
          </More>
        );
      })}
      <More summary="Any two points" open={round?.readings.some(({ line }) => line.startsWith('pair:')) ?? false}>
        <FreePair place={place} row={row} />
      </More>
      {round !== null && round.readings.length > 0 && (
        <div className="buttons">
          <button
            type="button"
            className="read-again"
            onClick={() => {
              takeInHand({ round: null });
              store.actions.change('Moved: a new round of readings', (project) =>
                beginRound(project, { id: newId(), at: clock.now(), stage }),
              );
            }}
          >
            Moved it: read again
          </button>
        </div>
      )}
    </FieldGroup>
  );
}
