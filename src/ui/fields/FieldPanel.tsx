import { type ReactNode, useState } from 'react';
import { fieldAt } from '../../core/document/fieldAt';
import { fieldValue } from '../../core/document/fieldValue';
import { formatLength } from '../../core/units/formatLength';
import { useStore } from '../useStore';

/** The fields of a station, with a strip at the foot that explains the one in hand. */
export function FieldPanel({ children }: { readonly children: ReactNode }) {
  const [path, setPath] = useState<string | null>(null);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it only watches which of its boxes has the focus
    <div
      className="field-panel"
      onFocus={({ target }) => setPath(target.dataset.path ?? null)}
      onBlur={() => setPath(null)}
    >
      <div className="field-groups">{children}</div>
      {path !== null && <HelpStrip path={path} />}
    </div>
  );
}

/** Help on one field: for eyes only, since the box itself carries it as its description. */
function HelpStrip({ path }: { readonly path: string }) {
  const project = useStore((state) => state.project);
  const inches = useStore((state) => state.device.units === 'in');
  const field = fieldAt(project, path);
  if (field === null) return null;
  const value = fieldValue(project, path);
  const exact = inches && field.kind === 'length' && typeof value === 'number' ? value : null;
  return (
    <div className="help-strip" aria-hidden="true">
      <p>{field.help}</p>
      {field.source !== undefined && <p className="quiet">Source: {field.source}</p>}
      {exact !== null && <p className="quiet">Kept as {formatLength(exact, { unit: 'mm', decimals: 3 })} mm</p>}
    </div>
  );
}
