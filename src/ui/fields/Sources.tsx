import type { Field } from '../../core/document/fieldTypes';

/** Where the defaults and rules of some fields come from, on demand. */
export function Sources({ fields }: { readonly fields: readonly Pick<Field, 'path' | 'label' | 'source'>[] }) {
  const told = fields.filter(({ source }) => source !== undefined);
  if (told.length === 0) return null;
  return (
    <details className="sources">
      <summary>Where these figures come from</summary>
      <dl>
        {told.map(({ path, label, source }) => (
          <div key={path}>
            <dt>{label}</dt>
            <dd>Source: {source}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
