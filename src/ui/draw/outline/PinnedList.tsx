import { measuredOf, wantedWords } from '../../../core/drawing/measure/measuredOf';
import { measuredFigure } from '../../../core/drawing/measure/measuredWords';
import { unpinDimension } from '../../../store/commands/dimensions/unpinDimension';
import { FieldGroup } from '../../fields/FieldGroup';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';

/** The dimensions pinned to the drawing, each with its figure as it is now. */
export function PinnedList() {
  const { actions } = useServices().store;
  const dimensions = useStore((state) => state.project.dimensions);
  const { bridge, slot } = useStore((state) => state.derived);
  const { withUnit } = useLengths();
  if (dimensions.length === 0 || !bridge.ok || !slot.ok) return null;
  return (
    <FieldGroup title="Pinned dimensions" hint="They follow the parts that they were pinned to.">
      <ul className="pinned">
        {dimensions.map((dimension) => {
          const measured = measuredOf(dimension, bridge.value, slot.value);
          const way = dimension.kind === 'distance' ? dimension.way : 'straight';
          const figure = measured === null ? 'its part is gone' : measuredFigure(measured, way, withUnit);
          const name = `${dimension.kind === 'distance' && way !== 'straight' ? `${way}, ` : ''}${wantedWords(dimension)}`;
          return (
            <li key={dimension.id}>
              <span>
                <strong>{figure}</strong> {name}
              </span>
              <button
                type="button"
                aria-label={`Take away ${figure}, ${name}`}
                onClick={() =>
                  actions.change(`Dimension taken away: ${figure}`, (project) => unpinDimension(project, dimension.id))
                }
              >
                Take away
              </button>
            </li>
          );
        })}
      </ul>
    </FieldGroup>
  );
}
