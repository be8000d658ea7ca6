import { useState } from 'react';
import type { ToolName } from '../../../store/types';
import { useServices } from '../../services';
import { useStore } from '../../useStore';
import { ActualSizeDialog } from './ActualSizeDialog';
import { ByHand } from './ByHand';
import { cssPixelsPerMm } from './cssPixelsPerMm';
import './outline.css';

const TOOLS: readonly { readonly tool: ToolName; readonly label: string; readonly title: string }[] = [
  {
    tool: 'move',
    label: 'Move',
    title: 'Press a part to choose it; drag what is chosen to move it. A drag elsewhere moves the view.',
  },
  { tool: 'add', label: 'Add nodes', title: 'Press on the outline: a node is put there.' },
  { tool: 'between', label: 'Distance between', title: 'Press two places or parts to measure between them.' },
];

interface HandBarProps {
  /** Magnifies the view by a factor. */
  readonly zoomBy: (factor: number) => void;
}

/** How near the view must be to actual size to be called so, as a share. */
const SAME = 1e-6;

/** Working on the drawing by hand: what a press does, and seeing it at actual size. */
export function HandBar({ zoomBy }: HandBarProps) {
  const { actions } = useServices().store;
  const { tool, several, snapping } = useStore((state) => state.handwork);
  const zoom = useStore((state) => state.zoom);
  const dotsPerMm = useStore((state) => state.device.dotsPerMm);
  const [setting, setSetting] = useState(false);
  const actual = cssPixelsPerMm(dotsPerMm);
  const atActualSize = actual > 0 && Math.abs(zoom / actual - 1) < SAME;

  const choose = (next: ToolName): void => {
    actions.setHandwork({ tool: next, picks: [] });
    if (next === 'add') actions.select(['footprint']);
  };
  const show = (pixels: number): void => {
    if (zoom > 0) zoomBy(pixels / zoom);
  };
  const set = (pixels: number): void => {
    actions.setDevice({ dotsPerMm: pixels * window.devicePixelRatio });
    show(pixels);
  };

  return (
    <fieldset className="hand-bar">
      <legend className="for-readers">By hand</legend>
      {TOOLS.map(({ tool: each, label, title }) => (
        <button key={each} type="button" aria-pressed={tool === each} title={title} onClick={() => choose(each)}>
          {label}
        </button>
      ))}
      <label
        className="check"
        title="Each press adds a part to those that are chosen, or takes it out. Shift does too."
      >
        <input
          type="checkbox"
          checked={several}
          onChange={(event) => actions.setHandwork({ several: event.target.checked })}
        />
        <span>Choose several</span>
      </label>
      <label className="check" title="Hold Alt or Ctrl while dragging to put it off.">
        <input
          type="checkbox"
          checked={snapping}
          onChange={(event) => actions.setHandwork({ snapping: event.target.checked })}
        />
        <span>Snap</span>
      </label>
      <button
        type="button"
        aria-pressed={atActualSize}
        onClick={() => (actual > 0 ? show(actual) : setSetting(true))}
        title="A millimetre of the bridge is a millimetre on the glass"
      >
        Actual size
      </button>
      {actual > 0 && (
        <button type="button" onClick={() => setSetting(true)}>
          Set size again
        </button>
      )}
      {atActualSize && <strong className="look-only">Look, don’t measure.</strong>}
      {setting && <ActualSizeDialog start={actual} done={set} closed={() => setSetting(false)} />}
      <div className="under-drawing">
        <ByHand place="under" />
      </div>
    </fieldset>
  );
}
