import type { DrawnOutline } from '../../core/document/outlineTypes';
import { nodesAmong } from '../../core/drawing/nodes/nodePart';
import type { AppState } from '../../store/types';

/** The freely drawn outline as it is shown now, when its nodes are to be seen: chosen, or about to get another; else null. */
export const outlineInHand = ({ project, preview, selection, handwork }: AppState): DrawnOutline | null => {
  const { outline } = (preview ?? project).bridge;
  const wanted = handwork.tool !== 'move' || selection.includes('footprint') || nodesAmong(selection).length > 0;
  return outline.kind === 'drawn' && wanted ? outline : null;
};
