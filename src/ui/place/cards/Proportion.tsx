import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { fine } from '../reading/fine';
import { COVERAGE } from './coverage';

/** How far the work carries the bridge beside how well it is known where the strings want it; nothing without a model. */
export function Proportion({ along }: { readonly along: number }) {
  const { models, placement } = useStore((state) => state.derived);
  const { style } = useLengths();
  if (!models.ok || !placement.ok || models.value.length === 0) return null;
  const wanted = Math.max(...models.value.map(({ sigma }) => sigma));
  const most = Math.max(along, wanted);
  const rows = [
    { name: 'The work', sigma: along },
    { name: 'What the strings want, by the model, the least sure of them', sigma: wanted },
  ];
  return (
    <figure className="proportion">
      <figcaption>For proportion, fore and aft:</figcaption>
      {rows.map(({ name, sigma }) => (
        <p key={name}>
          <span>
            {name}: <strong>±{fine(COVERAGE * sigma, style)}</strong>,{' '}
            {(COVERAGE * sigma * placement.value.centsPerMm).toFixed(1)} cents
          </span>
          <span className="share-bar" aria-hidden="true">
            <span style={{ width: most === 0 ? '0' : `${Math.round((100 * sigma) / most)}%` }} />
          </span>
        </p>
      ))}
      <p>
        {along > wanted
          ? 'The work is the larger of the two: better work gains most.'
          : 'The strings’ own doubt is the larger: read the figures of Measure again before you refine the work.'}
      </p>
    </figure>
  );
}
