import { type KeyboardEvent, useEffect, useRef, useState } from 'react';

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
 * with what is wrong, or null. Wrong text stays as typed; Escape brings the value back, and so does a value that changes
 * from elsewhere.
 */
export const useDraft = (shown: string, take: (text: string) => string | null): Draft => {
  const [draft, setDraft] = useState<string | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  // Enter and Escape are followed by a blur in the same breath, before the state above is drawn again.
  const latest = useRef<string | null>(null);

  const keep = (text: string | null, reason: string | null): void => {
    latest.current = text;
    setDraft(text);
    setWrong(reason);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: a value from elsewhere is the one thing to react to
  useEffect(() => keep(null, null), [shown]);

  const handOver = (): void => {
    const text = latest.current;
    if (text === null) return;
    const reason = take(text);
    keep(reason === null ? null : text, reason);
  };
  return {
    text: draft ?? shown,
    wrong,
    typing: draft !== null,
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
