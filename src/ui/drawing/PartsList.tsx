import { type ReactNode, useMemo } from 'react';
import { DATUM_NAME } from '../../core/placement/datumName';
import { useServices } from '../services';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { partsOfDrawing } from './partsOfDrawing';

/** The same parts that a pointer picks in the drawing, as buttons, and those that `children` add. */
export function PartsList({ children }: { readonly children: ReactNode }) {
  const { actions } = useServices().store;
  const drawing = useStore((state) => state.drawing);
  const selection = useStore((state) => state.selection);
  const { hand, nut } = useStore((state) => state.project.instrument);
  const { withUnit } = useLengths();
  const parts = useMemo(
    () => partsOfDrawing(drawing, hand, DATUM_NAME[nut.datum].short, withUnit),
    [drawing, hand, nut.datum, withUnit],
  );
  const chosen = parts.find(({ part }) => part === selection[0]);
  return (
    <div className="parts">
      <p className="chosen-part">
        {chosen === undefined ? (
          selection.join(', ') || 'Point at a part, or choose it here, to see where it lies.'
        ) : (
          <strong>{chosen.name}. </strong>
        )}
        {chosen?.place}
      </p>
      {/* biome-ignore lint/a11y/noRedundantRoles: a list without bullets is not announced as one everywhere */}
      <ul role="list" aria-label="Parts of the drawing">
        {parts.map(({ part, name, place }) => (
          <li key={part}>
            <button
              type="button"
              aria-pressed={selection.includes(part)}
              title={place}
              onClick={(event) => actions.press(part, event.shiftKey)}
            >
              {name}
            </button>
          </li>
        ))}
        {children}
      </ul>
    </div>
  );
}
