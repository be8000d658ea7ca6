import { type ReactNode, useId } from 'react';

interface FieldGroupProps {
  readonly title: string;
  readonly hint?: string;
  readonly children: ReactNode;
}

/** Fields that belong together, under a heading. */
export function FieldGroup({ title, hint, children }: FieldGroupProps) {
  const id = useId();
  return (
    <section className="field-group" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {hint !== undefined && <p className="hint">{hint}</p>}
      {children}
    </section>
  );
}
