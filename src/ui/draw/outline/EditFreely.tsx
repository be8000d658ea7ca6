import { drawFreely } from '../../../store/commands/outline/drawFreely';
import { useServices } from '../../services';

/** Turns a shape with dimensions into an outline of nodes; nothing of it moves. */
export function EditFreely() {
  const { actions } = useServices().store;
  const begin = (): void => {
    const [issue] = actions.change('Edit the outline freely', (project) => drawFreely(project));
    if (issue !== undefined) actions.warn(issue.message);
    else actions.select(['footprint']);
  };
  return (
    <button type="button" onClick={begin} title="Its nodes can then be moved, added and taken away.">
      Edit the outline freely
    </button>
  );
}
