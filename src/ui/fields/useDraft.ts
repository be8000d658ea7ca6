import { type KeyboardEvent, useContext, useEffect, useRef, useState } from 'react';
import { DraftsContext } from './drafts';

/** Text being typed, kept beside the value until it is whole. */
export interface Draft {
  readonly text: string;
  /** Why the text was not taken; null while there is nothing to say. */
  readonly wrong: string | null;
  readonly typing: boolean;
  change(text: string): void;
  leave(): void;
  press(event: KeyboardEvent): void;
}

/**
 * The text of a box: what the value shows until the maker types. Enter and leaving the box hand it over; `take` answers
 * with what is wrong, or null. Wrong text stays as typed, even over a change of station; Escape brings the value back, and
 * so does a value that changes from elsewhere.
 */
export const useDraft = (path: string, shown: string, take: (text: string) => string | null): Draft => {
  const drafts = useContext(DraftsContext);
  const [kept, setKept] = useState(() => {
    const before = drafts.get(path);
    return before?.shown === shown ? before : null;
  });
  // Enter and Escape are followed by a blur in the same breath, before the state above is drawn again.
  const latest = useRef(kept?.text ?? null);

  const keep = (text: string | null, wrong: string | null): void => {
    latest.current = text;
    const draft = text === null ? null : { text, wrong, shown };
    setKept(draft);
    if (draft === null) drafts.delete(path);
    else drafts.set(path, draft);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: a value from elsewhere is the one thing to react to
  useEffect(() => {
    if (kept !== null && kept.shown !== shown) keep(null, null);
  }, [shown]);

  const handOver = (): void => {
    const text = latest.current;
    if (text === null) return;
    const wrong = take(text);
    keep(wrong === null ? null : text, wrong);
  };
  return {
    text: kept?.text ?? shown,
    wrong: kept?.wrong ?? null,
    typing: kept !== null,
    change: (text) => keep(text, null),
    leave: handOver,
    press: (event) => {
      if (event.key === 'Enter') handOver();
      else if (event.key === 'Escape' && latest.current !== null) {
        event.preventDefault();
        keep(null, null);
      }
    },
  };
};
