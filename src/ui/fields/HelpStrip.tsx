import { fieldAt } from '../../core/document/fieldAt';
import { fieldValue } from '../../core/document/fieldValue';
import { formatLength } from '../../core/units/formatLength';
import { useStore } from '../useStore';

/** Help on one field: for eyes only, since the box itself carries it as its description. */
export function HelpStrip({ path }: { readonly path: string }) {
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
