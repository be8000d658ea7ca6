import { useMedia } from '../../useMedia';
import { useStore } from '../../useStore';
import { BetweenFields } from './BetweenFields';
import { ChosenFields } from './ChosenFields';
import { PinnedList } from './PinnedList';

interface ByHandProps {
  /** Beside the fields of the station, or under the drawing. */
  readonly place: 'beside' | 'under';
}

/** One column: what is above the drawing must not grow while the maker presses on it. */
const ONE_COLUMN = '(max-width: 899px)';

/**
 * What goes with the work in the drawing: what is chosen, or what is measured, and the dimensions that were pinned. It is
 * shown at one of its two places.
 */
export function ByHand({ place }: ByHandProps) {
  const under = useMedia(ONE_COLUMN);
  return under === (place === 'under') ? <Work /> : null;
}

function Work() {
  const tool = useStore((state) => state.handwork.tool);
  return (
    <>
      {tool === 'between' ? <BetweenFields /> : <ChosenFields />}
      <PinnedList />
    </>
  );
}
