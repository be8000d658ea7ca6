import type { Path } from '../../core/geom/types';
import { OutlinePreview } from './OutlinePreview';
import type { Turn } from './turnedPath';

interface LayOutlineProps {
  /** As it is turned. */
  readonly path: Path;
  readonly turn: Turn;
  readonly lay: (turn: Turn) => void;
}

/** The outline as it will lie on the top, with ways to turn it. */
export function LayOutline({ path, turn, lay }: LayOutlineProps) {
  const { quarters, flipped } = turn;
  const by = (more: number): void => lay({ flipped, quarters: (quarters + more) % 4 });
  return (
    <fieldset className="import-lay">
      <legend>How it lies on the top</legend>
      <p className="hint">Seen from the front, nut up. The upper edge becomes the front edge, which faces the nut.</p>
      <p className="import-nut" aria-hidden="true">
        ↑ nut
      </p>
      <OutlinePreview path={path} className="import-large" />
      <div className="buttons">
        <button type="button" onClick={() => by(1)}>
          Turn by 90°
        </button>
        <button type="button" onClick={() => by(2)}>
          Other edge to the nut
        </button>
        <button
          type="button"
          aria-pressed={flipped}
          onClick={() => lay({ flipped: !flipped, quarters: (4 - quarters) % 4 })}
        >
          Mirror left to right
        </button>
      </div>
      <p className="for-readers" aria-live="polite">
        {`Turned by ${quarters * 90}°${flipped ? ', mirrored' : ''}.`}
      </p>
    </fieldset>
  );
}
