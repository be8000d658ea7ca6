import paperCore from 'paper/dist/paper-core';
import type { PartName } from '../core/drawing/types';
import type { Point } from '../core/geom/types';
import type { DrawingSurface, MountedDrawing } from '../core/ports';
import type { Store } from '../store/createStore';
import { type Camera, fitCamera, panBy, toDrawing, zoomAt } from './camera';
import { createScene, drawingBounds } from './createScene';
import { followPointers } from './followPointers';
import type { HandTools } from './handTools';
import { themeOf } from './theme';
import { watchPixelRatio } from './watchPixelRatio';
import { watchScreen } from './watchScreen';

/** The drawing of the store's project, by Paper.js on a canvas. */
export const createSurface = (store: Store): DrawingSurface<HTMLElement> => ({
  mount: (host) => {
    // Paper.js asks for the dots to a pixel once, so another number of them takes another canvas.
    let mounted = mountDrawing(host, store);
    const stopWatching = watchPixelRatio(() => {
      mounted.unmount();
      mounted = mountDrawing(host, store);
    });
    return {
      showWhole: () => mounted.showWhole(),
      zoomBy: (factor) => mounted.zoomBy(factor),
      panBy: (x, y) => mounted.panBy(x, y),
      press: (key) => mounted.press(key),
      unmount: () => {
        stopWatching();
        mounted.unmount();
      },
    };
  },
});

/** Paper.js has this method, its types do not. */
type RemovableScope = paper.PaperScope & { remove(): void };

/** Whatever of the state the view shows. */
const LOOK = ['drawing', 'selection', 'handwork', 'preview'] as const;

const mountDrawing = (host: HTMLElement, store: Store): MountedDrawing => {
  const canvas = document.createElement('canvas');
  canvas.className = 'drawing-canvas';
  canvas.setAttribute('aria-hidden', 'true');
  host.append(canvas);

  const scope = new paperCore.PaperScope() as RemovableScope;
  scope.setup(canvas);
  scope.view.autoUpdate = false;
  const scene = createScene(scope);

  let size = { width: Math.max(host.clientWidth, 1), height: Math.max(host.clientHeight, 1) };
  let camera: Camera = { centre: { x: 0, y: 0 }, zoom: 1 };
  /** The view keeps the whole drawing in sight until the maker moves it. */
  let whole = true;
  let atBegin = { camera, whole };
  let frame = 0;
  /** Rises when everything must be painted anew. */
  let coat = 0;
  /** Waits for the first time that the maker draws. */
  let tools: HandTools | null | 'loading' = null;
  const toolsNow = (): HandTools | null =>
    tools === 'loading' || store.getState().device.station !== 'draw' ? null : tools;

  const draw = (): void => {
    toolsNow()?.step();
    frame = 0;
    const { drawing, selection } = store.getState();
    const bounds = whole ? drawingBounds(drawing) : null;
    if (bounds !== null) camera = fitCamera(bounds, size);
    scope.view.zoom = camera.zoom;
    scope.view.center = new scope.Point(camera.centre.x, camera.centre.y);
    scene.reconcile({ items: drawing, theme: themeOf(screen.scheme()), zoom: camera.zoom, selection, coat });
    scope.view.update();
    if (tools !== 'loading') tools?.show();
    if (store.getState().zoom !== camera.zoom) store.actions.setZoom(camera.zoom);
  };
  const redraw = (): void => {
    if (frame === 0) frame = requestAnimationFrame(draw);
  };
  const look = (next: Camera): void => {
    camera = next;
    whole = false;
    redraw();
  };

  const restyled = (): void => {
    coat += 1;
    redraw();
  };
  const resize = (): void => {
    size = { width: Math.max(host.clientWidth, 1), height: Math.max(host.clientHeight, 1) };
    scope.view.viewSize = new scope.Size(size.width, size.height);
    // A resized canvas is blank until it is painted again: paint before the browser shows it.
    draw();
  };
  const screen = watchScreen(host, { resized: resize, restyled });

  const partAt = (at: Point): PartName | null => scene.partAt(toDrawing(camera, size, at));
  const stopPointers = followPointers(canvas, {
    pan: (by) => look(panBy(camera, by)),
    zoom: (at, factor) => look(zoomAt(camera, size, at, factor)),
    pick: (press) => {
      const { shiftKey, ctrlKey, metaKey } = press.keys;
      const more = shiftKey || ctrlKey || metaKey || store.getState().handwork.several;
      if (toolsNow()?.pick(press, more) === true) return;
      const part = partAt(press.at);
      if (!more) store.actions.select(part === null ? [] : [part]);
      else if (part !== null) store.actions.press(part, true);
    },
    grab: (press) => toolsNow()?.grab(press) ?? null,
    begin: () => {
      atBegin = { camera, whole };
    },
    cancel: () => {
      ({ camera, whole } = atBegin);
      redraw();
    },
  });

  const unsubscribe = store.subscribe((state, before) => {
    if (state.device.station !== before.device.station) loadTools();
    const { slot } = state.derived;
    if (slot !== before.derived.slot && slot.ok && before.derived.slot.ok) {
      // A slot that moved along the neck stays where it was in the view, and the bridge with it.
      const by = slot.value.middle - before.derived.slot.value.middle;
      camera = { ...camera, centre: { ...camera.centre, y: camera.centre.y + by } };
    }
    if (LOOK.some((key) => state[key] !== before[key])) redraw();
  });

  const loadTools = (): void => {
    if (tools !== null || store.getState().device.station !== 'draw') return;
    tools = 'loading';
    import('./tools/createTools').then(
      ({ createTools }) => {
        if (!canvas.isConnected) return;
        tools = createTools(store, {
          canvas,
          camera: () => camera,
          size: () => size,
          scheme: screen.scheme,
          partAt,
          redraw,
          hold: () => {
            whole = false;
          },
        });
        redraw();
      },
      () => {
        tools = null;
        store.actions.warn('The part of the program that works on the drawing by hand could not be loaded.');
      },
    );
  };
  loadTools();

  resize();
  return {
    showWhole: () => {
      whole = true;
      redraw();
    },
    zoomBy: (factor) => look(zoomAt(camera, size, { x: size.width / 2, y: size.height / 2 }, factor)),
    panBy: (x, y) => look(panBy(camera, { x, y })),
    press: (key) => toolsNow()?.press(key) ?? false,
    unmount: () => {
      cancelAnimationFrame(frame);
      if (tools !== 'loading') tools?.stop();
      unsubscribe();
      stopPointers();
      screen.stop();
      scope.remove();
      canvas.remove();
    },
  };
};
