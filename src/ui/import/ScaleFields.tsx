import { useId, useState } from 'react';
import type { DrawingScale, ImportedOutlines } from '../../core/ports';
import { parseLength } from '../../core/units/parseLength';
import { useLengths } from '../useLengths';
import { scaleChoices } from './scaleChoices';

interface ScaleFieldsProps {
  readonly plain: ImportedOutlines;
  /** null: another length is about to be given. Answers with what is wrong, or null. */
  readonly resize: (scale: DrawingScale | null) => Promise<string | null>;
}

const QUESTIONS = {
  dpi: 'How many pixels make an inch?',
  size: 'How large is it?',
  unit: 'Which unit is it drawn in?',
} as const;

/** How large the drawing is: what the file says, or what it leaves open, with the size that each answer leads to. */
export function ScaleFields({ plain, resize }: ScaleFieldsProps) {
  const id = useId();
  const { style, withUnit } = useLengths();
  const choices = scaleChoices(plain);
  const [chosen, setChosen] = useState(plain.needs === null ? 'file' : '');
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const takeLength = async (): Promise<void> => {
    const length = text.trim() === '' ? null : parseLength(text, style.unit);
    if (length === null || !length.ok) await resize(null);
    if (length === null) return;
    setWrong(length.ok ? await resize({ by: 'length', longest: length.value }) : (length.issues[0]?.message ?? null));
  };
  return (
    <fieldset className="import-scale">
      <legend>{plain.needs === null ? 'Size' : QUESTIONS[plain.needs]}</legend>
      <p className="hint">{plain.needs === null ? `Units: ${plain.units}.` : `Asked because ${plain.units}.`}</p>
      {choices.map(({ id: choice, label, scale, size }) => (
        <label key={choice} className="import-choice">
          <input
            type="radio"
            name={id}
            value={choice}
            checked={choice === chosen}
            onChange={() => {
              setChosen(choice);
              setWrong(null);
              if (scale !== null) resize(scale).then(setWrong);
              else takeLength();
            }}
          />
          <span>
            {label}
            {size !== null && <strong>{` ${withUnit(size.across)} × ${withUnit(size.along)}`}</strong>}
          </span>
        </label>
      ))}
      {chosen === 'length' && (
        <div className="field">
          <label htmlFor={`${id}-length`}>Longer side of the first outline</label>
          <span className="box">
            <input
              id={`${id}-length`}
              type="text"
              inputMode="decimal"
              autoComplete="off"
              value={text}
              aria-invalid={wrong !== null}
              aria-describedby={`${id}-wrong`}
              onChange={(event) => setText(event.target.value)}
              onBlur={takeLength}
              onKeyDown={(event) => {
                if (event.key !== 'Enter') return;
                event.preventDefault();
                takeLength();
              }}
            />
            <span className="unit" aria-hidden="true">
              {style.unit}
            </span>
          </span>
        </div>
      )}
      <p id={`${id}-wrong`} role="alert" className={wrong === null ? undefined : 'field-wrong'}>
        {wrong}
      </p>
    </fieldset>
  );
}
