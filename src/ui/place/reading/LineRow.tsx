import { useId } from 'react';
import type { TakenReading } from '../../../core/document/buildTypes';
import type { ReadLine } from '../../../core/placement/reading/types';
import { parseLength } from '../../../core/units/parseLength';
import { takeReading } from '../../../store/commands/place/takeReading';
import { useDraft } from '../../fields/useDraft';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { takeInHand, useInHand } from './inHand';
import { TakenChips } from './TakenChips';
import { ToolSelect } from './ToolSelect';
import { type Place, toolOf, toolSigma } from './usePlace';

/** A reading farther than this from what is expected is of another line, or mistyped, mm. */
const FARTHEST = 20;

interface LineRowProps {
  readonly place: Place;
  readonly line: ReadLine;
  /** As it stands in the picture; null for a line without a number. */
  readonly number: number | null;
  /** Ids of readings of which one does not go with the rest. */
  readonly quarrel: readonly string[];
  readonly residuals: ReadonlyMap<string, number>;
}

/** One line to read: what is expected, a box for what was read, its tool, and the readings taken. */
export function LineRow({ place, line, number, quarrel, residuals }: LineRowProps) {
  const id = useId();
  const { store, clock, newId } = useServices();
  const { style, withUnit } = useLengths();
  const { line: inHand, stage } = useInHand();
  const tool = toolOf(line, place.tools, style.unit);
  const taken = (place.round?.readings ?? []).filter((reading) => reading.line === line.id);

  const take = (text: string): string | null => {
    if (text.trim() === '') return null;
    const length = parseLength(text, style.unit);
    if (!length.ok) return length.issues[0]?.message ?? null;
    const { value } = length;
    if (value < 0 && !line.signed) return `Expected a length, about ${withUnit(line.expected)}.`;
    if (Math.abs(value - line.expected) > FARTHEST)
      return `${withUnit(Math.abs(value - line.expected))} from what is expected here: another line, or a slip? Expected about ${withUnit(line.expected)}.`;
    const reading: TakenReading = { id: newId(), line: line.id, value, tool, sigma: toolSigma(tool, place.tools) };
    const into = place.round ?? { id: newId(), at: clock.now(), stage };
    const issues = store.actions.change(`Read: ${line.label}, ${withUnit(value)}`, (project) =>
      takeReading(project, reading, { id: into.id, at: into.at, stage: into.stage }),
    );
    return issues[0]?.message ?? null;
  };
  // Each reading that is taken empties the box for the next one.
  const draft = useDraft(`place.${line.id}`, '', take);
  const invalid = draft.wrong !== null;
  return (
    <li
      className="read-line"
      data-held={inHand === line.id ? '' : undefined}
      data-read={taken.length > 0 ? '' : undefined}
    >
      <span className="read-number" aria-hidden="true">
        {number ?? ''}
      </span>
      <label htmlFor={id}>{line.label}</label>
      <span className="read-expected" id={`${id}-expected`}>
        expected <strong>{withUnit(line.expected)}</strong>
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
          data-line={line.id}
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
      {invalid && (
        <p id={`${id}-wrong`} className="field-wrong">
          {draft.wrong}
        </p>
      )}
      <div className="read-foot">
        <ToolSelect place={place} line={line} />
        {place.round !== null && (
          <TakenChips round={place.round} line={line} taken={taken} quarrel={quarrel} residuals={residuals} />
        )}
      </div>
      <p id={`${id}-how`} className="read-how" hidden={inHand !== line.id}>
        {line.how} {line.correction?.words}
      </p>
    </li>
  );
}
