import { useId, useState } from 'react';
import type { TakenReading } from '../../../core/document/buildTypes';
import { READ_TOOLS } from '../../../core/placement/reading/readTools';
import type { ReadLine } from '../../../core/placement/reading/types';
import { parseLength } from '../../../core/units/parseLength';
import { removeReading } from '../../../store/commands/place/removeReading';
import { takeReading } from '../../../store/commands/place/takeReading';
import { useDraft } from '../../fields/useDraft';
import { NINETEEN_OF_TWENTY } from '../../plusMinus';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { fine } from './fine';
import { takeInHand, useInHand } from './inHand';
import { type Place, toolSigma } from './usePlace';

/** A reading farther than this from what is expected is of another line, or mistyped, mm. */
const FARTHEST = 20;

interface LineRowProps {
  readonly place: Place;
  readonly line: ReadLine;
  /** As it stands in the picture; null for a line without a number. */
  readonly number: number | null;
  /** The id of the reading that does not go with the rest. */
  readonly quarrel: string | null;
  readonly residuals: ReadonlyMap<string, number>;
}

/** One line to read: what is expected, a box for what was read, its tool, and the readings taken. */
export function LineRow({ place, line, number, quarrel, residuals }: LineRowProps) {
  const id = useId();
  const { store, clock, newId } = useServices();
  const { style, withUnit } = useLengths();
  const doubts = useStore((state) => state.project.doubts);
  const { line: inHand, stage } = useInHand();
  const [tool, setTool] = useState<string>(line.tool);
  const taken = (place.round?.readings ?? []).filter((reading) => reading.line === line.id);

  const take = (text: string): string | null => {
    if (text.trim() === '') return null;
    const length = parseLength(text, style.unit);
    if (!length.ok) return length.issues[0]?.message ?? null;
    const { value } = length;
    if (value < 0 && !line.signed) return `Expected a length, about ${withUnit(line.expected)}.`;
    if (Math.abs(value - line.expected) > FARTHEST)
      return `${withUnit(Math.abs(value - line.expected))} from what is expected here: another line, or a slip? Expected about ${withUnit(line.expected)}.`;
    const reading: TakenReading = { id: newId(), line: line.id, value, tool, sigma: toolSigma(tool, doubts) };
    const issues = store.actions.change(`Read: ${line.label}, ${withUnit(value)}`, (project) =>
      takeReading(project, reading, { id: newId(), at: clock.now(), stage }),
    );
    return issues[0]?.message ?? null;
  };
  // Each reading that is taken empties the box for the next one.
  const draft = useDraft(`place.${line.id}`, '', take);
  const invalid = draft.wrong !== null;
  return (
    <li className="read-line" data-held={inHand === line.id ? '' : undefined}>
      <span className="read-number" aria-hidden="true">
        {number ?? '·'}
      </span>
      <label htmlFor={id}>{line.label}</label>
      <span className="read-expected" id={`${id}-expected`}>
        expected {withUnit(line.expected)}
      </span>
      <span className="box">
        <input
          id={id}
          type="text"
          inputMode={line.signed ? 'text' : 'decimal'}
          autoComplete="off"
          spellCheck={false}
          value={draft.text}
          title={line.how}
          data-draft={draft.typing ? '' : undefined}
          aria-invalid={invalid}
          aria-describedby={`${id}-expected ${id}-how${invalid ? ` ${id}-wrong` : ''}`}
          style={{ paddingRight: `${9 * style.unit.length + 16}px` }}
          onFocus={() => takeInHand({ line: line.id })}
          onChange={(event) => draft.change(event.target.value)}
          onBlur={draft.leave}
          onKeyDown={draft.press}
        />
        <span className="unit" aria-hidden="true">
          {style.unit}
        </span>
      </span>
      <select
        className="read-tool"
        aria-label={`Tool for ${line.label}`}
        value={tool}
        onChange={(event) => setTool(event.target.value)}
      >
        {READ_TOOLS.map((each) => (
          <option key={each.id} value={each.id}>
            {each.name}, ±{fine(toolSigma(each.id, doubts), style)}
          </option>
        ))}
      </select>
      <p id={`${id}-how`} className="read-how" hidden={inHand !== line.id}>
        {line.how} {line.correction?.words}
      </p>
      {invalid && (
        <p id={`${id}-wrong`} className="field-wrong">
          {draft.wrong}
        </p>
      )}
      {taken.length > 0 && (
        <ul className="read-taken">
          {taken.map((reading) => (
            <li key={reading.id} data-quarrel={reading.id === quarrel ? '' : undefined}>
              <span>
                {withUnit(reading.value)} ± {fine(NINETEEN_OF_TWENTY * reading.sigma, style)}
                {residuals.has(reading.id) && (
                  <small>, {restWords(residuals.get(reading.id) ?? 0, (mm) => fine(mm, style))}</small>
                )}
                {reading.id === quarrel && <strong> Does not go with the rest: read it again.</strong>}
              </span>
              <button
                type="button"
                className="quiet-button"
                onClick={() =>
                  store.actions.change(`Reading taken out: ${line.label}`, (project) =>
                    removeReading(project, place.round?.id ?? '', reading.id),
                  )
                }
                aria-label={`Take out ${withUnit(reading.value)}, ${line.label}`}
              >
                Remove
              </button>
            </li>
          ))}
        </ul>
      )}
    </li>
  );
}

/** How a reading lies against the answer. */
const restWords = (residual: number, show: (mm: number) => string): string =>
  Math.abs(residual) < 0.005
    ? 'as the answer has it'
    : `${show(Math.abs(residual))} ${residual > 0 ? 'over' : 'under'} the answer`;
