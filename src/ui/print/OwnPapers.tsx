import { useId, useState } from 'react';
import { PAPERS } from '../../core/sheets/papers';
import { addPaper, type PrintSettings } from '../../core/sheets/printSettings';
import { parseLength } from '../../core/units/parseLength';
import { useServices } from '../services';
import { useLengths } from '../useLengths';

interface OwnPapersProps {
  readonly settings: PrintSettings;
  readonly set: (settings: PrintSettings) => void;
}

const EMPTY = { name: '', width: '', height: '' };

/** Which of the usual papers are at hand, and papers of other sizes. */
export function OwnPapers({ settings, set }: OwnPapersProps) {
  const { withUnit } = useLengths();
  const own = (id: string, owned: boolean): void => {
    const others = settings.owned.filter((each) => each !== id);
    set({ ...settings, owned: owned ? [...others, id] : others });
  };
  return (
    <>
      <fieldset className="paper-list">
        <legend>Papers that you own, offered first</legend>
        {PAPERS.map(({ id, name }) => (
          <label key={id} className="check">
            <input
              type="checkbox"
              checked={settings.owned.includes(id)}
              onChange={(event) => own(id, event.target.checked)}
            />
            <span>{name}</span>
          </label>
        ))}
      </fieldset>
      {settings.own.length > 0 && (
        <ul className="plain">
          {settings.own.map(({ id, name, width, height }) => (
            <li key={id}>
              {name}, {withUnit(width)} × {withUnit(height)}{' '}
              <button
                type="button"
                aria-label={`Remove ${name}`}
                onClick={() => set({ ...settings, own: settings.own.filter((each) => each.id !== id) })}
              >
                Remove
              </button>
            </li>
          ))}
        </ul>
      )}
      <NewPaper settings={settings} set={set} />
    </>
  );
}

/** A paper of another size, by its name and sides. */
function NewPaper({ settings, set }: OwnPapersProps) {
  const { actions } = useServices().store;
  const { style } = useLengths();
  const [typed, setTyped] = useState(EMPTY);
  const [wrong, setWrong] = useState<string | null>(null);
  const id = useId();
  /** What is wrong with what was typed; null once the paper is added. */
  const add = (): string | null => {
    const [width, height] = [parseLength(typed.width, style.unit), parseLength(typed.height, style.unit)];
    if (!width.ok || !height.ok) return 'Expected both sides of the paper as lengths, such as 148 or 5 1/2in.';
    const added = addPaper(settings, { name: typed.name, width: width.value, height: height.value });
    if (!added.ok) return added.issues[0]?.message ?? null;
    set(added.value);
    actions.say(`${typed.name.trim()} is among your papers.`);
    setTyped(EMPTY);
    return null;
  };
  const boxes = [
    { key: 'name', label: 'Name of another paper', unit: '' },
    { key: 'width', label: 'Its short side', unit: style.unit },
    { key: 'height', label: 'Its long side', unit: style.unit },
  ] as const;
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        setWrong(add());
      }}
    >
      {boxes.map(({ key, label, unit }) => (
        <div key={key} className={unit === '' ? 'field field-wide' : 'field'}>
          <label htmlFor={`${id}-${key}`}>{label}</label>
          <span className="box">
            <input
              id={`${id}-${key}`}
              type="text"
              autoComplete="off"
              inputMode={unit === '' ? 'text' : 'decimal'}
              style={unit === '' ? undefined : { paddingRight: '34px' }}
              value={typed[key]}
              aria-describedby={`${id}-wrong`}
              onChange={(event) => setTyped({ ...typed, [key]: event.target.value })}
            />
            {unit !== '' && (
              <span className="unit" aria-hidden="true">
                {unit}
              </span>
            )}
          </span>
        </div>
      ))}
      <p id={`${id}-wrong`} aria-live="polite" className={wrong === null ? undefined : 'field-wrong'}>
        {wrong}
      </p>
      <button type="submit">Add this paper</button>
    </form>
  );
}
