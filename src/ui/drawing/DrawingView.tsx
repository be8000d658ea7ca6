import { type KeyboardEvent, lazy, Suspense, useId, useLayoutEffect, useRef } from 'react';
import type { MountedDrawing } from '../../core/ports';
import { useServices } from '../services';
import { useStore } from '../useStore';
import { moveByKey, ZOOM_STEP } from './moveByKey';
import { PartsList } from './PartsList';

const HandBar = lazy(async () => ({ default: (await import('../draw/outline/HandBar')).HandBar }));
const NodeList = lazy(async () => ({ default: (await import('../draw/outline/NodeList')).NodeList }));

/** CSS pixels to a millimetre by definition: 96 to the inch. */
const NOMINAL = 96 / 25.4;

/** The bridge drawn to scale, with its controls and its parts. */
export function DrawingView() {
  const { surface, store } = useServices();
  const host = useRef<HTMLDivElement>(null);
  const mounted = useRef<MountedDrawing | null>(null);
  const hint = useId();
  const zoom = useStore((state) => state.zoom);
  const byHand = useStore((state) => state.device.station === 'draw');

  // Before the screen is painted for the first time: the drawing comes with it.
  useLayoutEffect(() => {
    if (host.current === null) return;
    const drawing = surface.mount(host.current);
    mounted.current = drawing;
    return () => {
      drawing.unmount();
      mounted.current = null;
    };
  }, [surface]);

  const press = (event: KeyboardEvent<HTMLDivElement>): void => {
    if (mounted.current === null) return;
    if (!mounted.current.press(event)) {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (event.key === 'Escape') {
        store.actions.select([]);
        host.current?.blur();
      } else if (!moveByKey(mounted.current, event.key)) return;
    }
    event.preventDefault();
  };

  return (
    <section className="drawing" aria-label="Drawing">
      {/* biome-ignore lint/a11y/useSemanticElements: no element of HTML is a view that arrow keys move */}
      <div
        ref={host}
        role="group"
        className="drawing-host"
        aria-label="View of the bridge"
        aria-describedby={hint}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the view is moved by keys while it has the focus
        tabIndex={0}
        onKeyDown={press}
      />
      <p id={hint} hidden>
        Arrow keys move what is chosen, or the view; plus and minus magnify, 0 shows the whole bridge, Escape leaves.
      </p>
      <div className="drawing-bar">
        <button type="button" onClick={() => mounted.current?.showWhole()}>
          Whole bridge
        </button>
        <button type="button" aria-label="Zoom out" onClick={() => mounted.current?.zoomBy(1 / ZOOM_STEP)}>
          −
        </button>
        <span className="zoom">{zoom === 0 ? '' : `${Math.round((zoom / NOMINAL) * 100)} %`}</span>
        <button type="button" aria-label="Zoom in" onClick={() => mounted.current?.zoomBy(ZOOM_STEP)}>
          +
        </button>
        {byHand && (
          <Suspense fallback={null}>
            <HandBar zoomBy={(factor) => mounted.current?.zoomBy(factor)} />
          </Suspense>
        )}
      </div>
      <PartsList>
        {byHand && (
          <Suspense fallback={null}>
            <NodeList />
          </Suspense>
        )}
      </PartsList>
    </section>
  );
}
