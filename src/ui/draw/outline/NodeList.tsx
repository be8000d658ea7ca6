import { useState } from 'react';
import { nodePart } from '../../../core/drawing/nodes/nodePart';
import { placeWords } from '../../../core/drawing/nodes/placeWords';
import { nodesOf } from '../../../core/geom/edit/nodesOf';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';

/** The nodes of an outline drawn freely, as one more entry of the list of parts; they are many, so they come when it is opened. */
export function NodeList() {
  const { actions } = useServices().store;
  const outline = useStore((state) => state.project.bridge.outline);
  const selection = useStore((state) => state.selection);
  const { withUnit } = useLengths();
  const [open, setOpen] = useState(false);
  if (outline.kind !== 'drawn') return null;
  const nodes = nodesOf(outline.path);
  const words = placeWords(withUnit);
  return (
    <li className="nodes">
      <details onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>Nodes of the outline ({nodes.length})</summary>
        {open && (
          // biome-ignore lint/a11y/noRedundantRoles: a list without bullets is not announced as one everywhere
          <ul role="list" aria-label="Nodes of the outline">
            {nodes.map(({ index, at, join }) => {
              const part = nodePart(index);
              return (
                <li key={part}>
                  <button
                    type="button"
                    aria-pressed={selection.includes(part)}
                    aria-label={`Node ${index + 1}, ${join}, ${words(at)}`}
                    title={`${join}, ${words(at)}`}
                    onClick={(event) => actions.press(part, event.shiftKey)}
                  >
                    Node {index + 1}
                  </button>
                </li>
              );
            })}
          </ul>
        )}
      </details>
    </li>
  );
}
