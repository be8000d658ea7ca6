import type { StringUp } from '../../../core/document/buildTypes';
import { lengthField, numberField, orEmpty, textField } from '../../../core/document/fieldRows';
import { LONGEST_METER, LONGEST_NOTE, STRING_UP_LIMITS } from '../../../core/document/stringUpLimits';
import { changeStringUp, type StringUpChange } from '../../../store/commands/stringUp/changeStringUp';
import { useRun } from './useStringUps';
import { ValueBox } from './ValueBox';

const { action, relief, humidity } = STRING_UP_LIMITS;

/** Action, relief, air and words beside the cents; each may stay empty. */
export function BesideFields({ stringUp }: { readonly stringUp: StringUp }) {
  const run = useRun();
  const at = `stringUp.${stringUp.id}`;
  const set = (label: string, change: StringUpChange) =>
    run(label, (project) => changeStringUp(project, stringUp.id, change));
  return (
    <>
      {(['treble', 'bass'] as const).map((side) => (
        <ValueBox
          key={side}
          field={orEmpty(
            lengthField(
              `${at}.action.${side}`,
              `Action as read, ${side}`,
              ...action,
              'From the 12th fret to the outer string, open. What was learned is learned for the action that was read.',
            ),
          )}
          value={stringUp.action[side]}
          take={(value) =>
            set(`Action as read, ${side}`, { action: { ...stringUp.action, [side]: value as number | null } })
          }
        />
      ))}
      <ValueBox
        field={orEmpty(
          lengthField(
            `${at}.relief`,
            'Relief as read',
            ...relief,
            'The deepest dip below a straightedge on the frets.',
          ),
        )}
        value={stringUp.relief}
        take={(value) => set('Relief as read', { relief: value as number | null })}
      />
      <ValueBox
        field={orEmpty(
          numberField(`${at}.humidity`, 'Humidity', '%', ...humidity, 'Of the air that the instrument had stood in.'),
        )}
        value={stringUp.humidity}
        take={(value) => set('Humidity', { humidity: value as number | null })}
      />
      <ValueBox
        field={textField(
          `${at}.meter`,
          'Which meter',
          LONGEST_METER,
          'Meters side by side disagree by ten percent and more: say which one it was.',
        )}
        value={stringUp.meter}
        take={(value) => set('Which meter', { meter: String(value) })}
      />
      <ValueBox
        field={textField(`${at}.note`, 'Note', LONGEST_NOTE, 'Strings, what was changed, how it felt.')}
        value={stringUp.note}
        take={(value) => set('Note of the string-up', { note: String(value) })}
      />
    </>
  );
}
