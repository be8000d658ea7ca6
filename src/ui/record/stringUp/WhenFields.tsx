import { useId } from 'react';
import type { CrownAsRead, StringUp, StringUpStage } from '../../../core/document/buildTypes';
import { numberField } from '../../../core/document/fieldRows';
import { STRING_UP_LIMITS } from '../../../core/document/stringUpLimits';
import { changeStringUp, type StringUpChange } from '../../../store/commands/stringUp/changeStringUp';
import { SelectRow } from '../../fields/SelectRow';
import { CROWNS, STAGES } from './stringUpWords';
import { useRun } from './useStringUps';
import { ValueBox } from './ValueBox';

interface WhenFieldsProps {
  readonly stringUp: StringUp;
  /** Where the strings break with the crown so, by string id; null while the saddle is not known. */
  readonly stoodWith: (crown: CrownAsRead) => StringUp['stood'] | null;
  /** Whether an earlier reading asked for filing. */
  readonly later: boolean;
}

/** When it was read, with what, and how the crown stood. */
export function WhenFields({ stringUp, stoodWith, later }: WhenFieldsProps) {
  const run = useRun();
  const id = useId();
  const set = (label: string, change: StringUpChange) =>
    run(label, (project) => changeStringUp(project, stringUp.id, change));
  const choose = (crown: CrownAsRead): void => {
    const stood = stoodWith(crown);
    if (stood !== null) set(`Crown as read: ${CROWNS.find(({ value }) => value === crown)?.label}`, { crown, stood });
  };
  return (
    <>
      <div className="field field-wide">
        <label htmlFor={id}>Read on</label>
        <span className="box">
          <input
            id={id}
            type="date"
            value={stringUp.at.slice(0, 10)}
            onChange={({ target }) => {
              if (/^\d{4}-\d{2}-\d{2}$/.test(target.value))
                set(`Read on ${target.value}`, { at: `${target.value}${stringUp.at.slice(10)}` });
            }}
          />
        </span>
      </div>
      <SelectRow
        label="Setting"
        about="Only first settings teach what to expect next time; later ones say how it settles."
        value={stringUp.stage}
        choices={STAGES}
        choose={(value) =>
          set(`Setting: ${STAGES.find((each) => each.value === value)?.label}`, { stage: value as StringUpStage })
        }
      />
      <SelectRow
        label="Crown as read"
        about="Where the strings broke over the saddle while they were read: on its straight line as planned, or each at its mark."
        value={stringUp.crown}
        choices={later || stringUp.crown === 'filed' ? CROWNS : CROWNS.filter(({ value }) => value !== 'filed')}
        choose={(value) => choose(value as CrownAsRead)}
      />
      <ValueBox
        field={numberField(
          `stringUp.${stringUp.id}.tuner`,
          'Tuner, ±',
          'cents',
          ...STRING_UP_LIMITS.tuner,
          'How far one reading may be off, in 19 cases of 20. It counts for the open string and for the fretted note.',
          'one cent, as many tuners are sold: common practice, no source',
        )}
        value={stringUp.tuner}
        take={(value) => set(`Tuner ± ${value} cents`, { tuner: Number(value) })}
      />
    </>
  );
}
