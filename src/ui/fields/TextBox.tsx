import { useId } from 'react';
import { useDraft } from './useDraft';

interface TextBoxProps {
  readonly label: string;
  /** Where the field lives in the project; the help strip finds it by this. */
  readonly path: string;
  /** The value as text. */
  readonly shown: string;
  /** Stands behind the box. */
  readonly unit: string;
  /** Read out with the box: what to measure, and where the figure comes from. */
  readonly about: string;
  readonly decimal: boolean;
  /** Stands in an empty box. */
  readonly usual?: string | undefined;
  /** Said under the box while nothing is wrong. */
  readonly note?: string | undefined;
  /** Takes the typed text; answers with what is wrong, or null. */
  readonly take: (text: string) => string | null;
}

/** A labelled box that keeps what is typed until Enter or until it is left. */
export function TextBox({ label, path, shown, unit, about, decimal, usual, note, take }: TextBoxProps) {
  const id = useId();
  const draft = useDraft(path, shown, take);
  const invalid = draft.wrong !== null;
  return (
    <div className={decimal ? 'field' : 'field field-wide'}>
      <label htmlFor={id}>{label}</label>
      <span className="box">
        <input
          id={id}
          type="text"
          inputMode={decimal ? 'decimal' : 'text'}
          autoComplete="off"
          spellCheck={false}
          value={draft.text}
          style={decimal && unit !== '' ? { paddingRight: `${9 * unit.length + 16}px` } : undefined}
          placeholder={usual}
          title={about}
          data-path={path}
          data-draft={draft.typing ? '' : undefined}
          aria-invalid={invalid}
          aria-describedby={`${id}-about${note === undefined ? '' : ` ${id}-note`}${invalid ? ` ${id}-wrong` : ''}`}
          onChange={(event) => draft.change(event.target.value)}
          onBlur={draft.leave}
          onKeyDown={draft.press}
        />
        {unit !== '' && (
          <span className="unit" aria-hidden="true">
            {unit}
          </span>
        )}
      </span>
      <span id={`${id}-about`} hidden>
        {unit === '' ? about : `In ${unit}. ${about}`}
      </span>
      {note !== undefined && (
        <p id={`${id}-note`} className="field-note">
          {note}
        </p>
      )}
      {invalid && (
        <p id={`${id}-wrong`} className="field-wrong">
          {draft.wrong}
        </p>
      )}
    </div>
  );
}
