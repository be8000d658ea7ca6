import { type ReactNode, useId } from 'react';

interface FieldGroupProps {
  /** Where the station's index leads to. */
  readonly id?: string;
  readonly title: string;
  readonly hint?: string;
  readonly children: ReactNode;
}

/** Fields that belong together, under a heading. */
export function FieldGroup({ id: place, title, hint, children }: FieldGroupProps) {
  const id = useId();
  return (
    <section className="field-group" aria-labelledby={id}>
      <h2 id={id}>
        {place === undefined ? (
          title
        ) : (
          <span id={place} tabIndex={-1}>
            {title}
          </span>
        )}
      </h2>
      {hint !== undefined && <p className="hint">{hint}</p>}
      {children}
    </section>
  );
}
