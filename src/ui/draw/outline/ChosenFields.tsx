import { anchorsOf } from '../../../core/drawing/measure/anchorsOf';
import { nodeOfPart } from '../../../core/drawing/nodes/nodePart';
import { FieldGroup } from '../../fields/FieldGroup';
import { useServices } from '../../services';
import { useStore } from '../../useStore';
import { fieldOfPart } from './fieldOfPart';
import { NodeFields } from './NodeFields';
import { SeveralFields } from './SeveralFields';

const capital = (part: string): string => part.charAt(0).toUpperCase() + part.slice(1);

/** What is chosen in the drawing, with everything about it that can be typed. */
export function ChosenFields() {
  const { actions } = useServices().store;
  const selection = useStore((state) => state.selection);
  const outline = useStore((state) => state.project.bridge.outline);
  const { bridge, slot } = useStore((state) => state.derived);
  const [first, second] = selection;
  if (first === undefined) return null;
  const node = second === undefined ? nodeOfPart(first) : null;
  const field = second === undefined ? fieldOfPart(first) : null;
  const title = second === undefined ? capital(first) : `${selection.length} parts`;

  const measure = (): void => {
    if (!bridge.ok || !slot.ok) return;
    const all = anchorsOf(bridge.value, slot.value, outline.kind === 'drawn').map(({ anchor }) => anchor);
    const picks = selection.flatMap((part) => all.find((anchor) => anchor.part === part) ?? []).slice(0, 2);
    actions.setHandwork({ tool: 'between', measure: 'distance', picks });
  };

  return (
    <FieldGroup title={`Chosen: ${title}`}>
      {second !== undefined && <p className="hint">{selection.map(capital).join(', ')}</p>}
      <p className="hint">
        Arrow keys in the drawing move it by 0.1 mm, with Shift by 1 mm, with Alt by 0.01 mm. A drag snaps; hold Alt or
        Ctrl to put that off.
      </p>
      {node !== null && outline.kind === 'drawn' && <NodeFields key={node} outline={outline} index={node} />}
      {second !== undefined && <SeveralFields parts={selection} />}
      <div className="button-row">
        {field !== null && (
          <button type="button" onClick={() => document.querySelector<HTMLElement>(`[data-path="${field}"]`)?.focus()}>
            Go to its fields
          </button>
        )}
        {selection.length === 2 && (
          <button type="button" onClick={measure}>
            Distance between them
          </button>
        )}
        <button type="button" onClick={() => actions.select([])}>
          Let go
        </button>
      </div>
    </FieldGroup>
  );
}
