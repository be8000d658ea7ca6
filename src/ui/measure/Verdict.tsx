import type { ReactNode } from 'react';

interface VerdictProps {
  readonly weight: 'good' | 'look' | 'wrong';
  readonly words: string;
  readonly reasons?: readonly { readonly id: string; readonly words: string; readonly source: string | null }[];
  /** More that stands with the answer. */
  readonly children?: ReactNode;
}

/** An answer with what speaks for it. */
export function Verdict({ weight, words, reasons = [], children }: VerdictProps) {
  return (
    <div className={`verdict verdict-${weight}`}>
      <p className="verdict-words">{words}</p>
      {reasons.length > 0 && (
        <ul className="plain">
          {reasons.map(({ id, words: reason, source }) => (
            <li key={id}>
              {reason}
              {source !== null && <small>Limit: {source}</small>}
            </li>
          ))}
        </ul>
      )}
      {children}
    </div>
  );
}
