import { useEffect } from 'react';
import { readCents } from '../../../store/commands/stringUp/readCents';
import { useDraft } from '../../fields/useDraft';
import { centsText } from './centsText';
import { parseCents } from './parseCents';
import { useRun } from './useStringUps';

interface CentsBoxProps {
  readonly stringUp: string;
  readonly string: { readonly id: string; readonly label: string };
  readonly fret: number;
  readonly cents: number | undefined;
  /** Id of the element that says what is wrong in its row. */
  readonly wrongId: string;
  readonly tell: (fret: number, wrong: string | null) => void;
}

/** A box for the cents of one string at one fret; empty where it was not read. */
export function CentsBox({ stringUp, string, fret, cents, wrongId, tell }: CentsBoxProps) {
  const run = useRun();
  const shown = centsText(cents);
  const name = `${string.label}, cents at fret ${fret}`;
  const take = (text: string): string | null => {
    if (text === shown) return null;
    const read = parseCents(text);
    if (!read.ok) return read.issues[0]?.message ?? null;
    const label = read.value === null ? `${name}: not read` : `${name}: ${centsText(read.value)}`;
    const issues = run(label, (project) =>
      readCents(project, { id: stringUp, string: string.id, fret, cents: read.value }),
    );
    return issues[0]?.message ?? null;
  };
  const draft = useDraft(`stringUp.${stringUp}.${string.id}.${fret}`, shown, take);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the row is told when the message changes, not when it is drawn
  useEffect(() => tell(fret, draft.wrong), [draft.wrong]);
  return (
    <span className="box">
      <input
        type="text"
        inputMode="text"
        autoComplete="off"
        spellCheck={false}
        aria-label={name}
        aria-invalid={draft.wrong !== null}
        aria-describedby={wrongId}
        data-draft={draft.typing ? '' : undefined}
        value={draft.text}
        onChange={({ target }) => draft.change(target.value)}
        onBlur={draft.leave}
        onKeyDown={draft.press}
      />
    </span>
  );
}
