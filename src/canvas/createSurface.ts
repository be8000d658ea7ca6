import type { PartName } from '../core/drawing/types';
import type { Point } from '../core/geom/types';
import type { DrawingSurface, MountedDrawing } from '../core/ports';
import type { Store } from '../store/createStore';
import { afterFrame } from './afterFrame';
import { type Camera, fitCamera, panBy, toDrawing, zoomAt } from './camera';
import { createGlass } from './createGlass';
import { createPicture } from './createPicture';
import { drawingBounds } from './drawingBounds';
import { followPointers } from './followPointers';
import type { Press } from './handTools';
import { type LoadedPicker, loadPicker } from './loadPicker';
import { type LoadedTools, loadTools } from './loadTools';
import { themeOf } from './theme';
import { watchScreen } from './watchScreen';

/** The drawing of the store's project on a canvas. */
export const createSurface = (store: Store): DrawingSurface<HTMLElement> => ({
  mount: (host) => mountDrawing(host, store),
});

/** Whatever of the state the view shows. */
const LOOK = ['drawing', 'selection', 'handwork', 'preview'] as const;

const mountDrawing = (host: HTMLElement, store: Store): MountedDrawing => {
  const glass = createGlass(host);
  const { canvas, size } = glass;
  const picture = createPicture(glass);

  let camera: Camera = { centre: { x: 0, y: 0 }, zoom: 1 };
  /** The view keeps the whole drawing in sight until the maker moves it. */
  let whole = true;
  let atBegin = { camera, whole };
  let frame = 0;
  let picker: LoadedPicker | null = null;
  let tools: LoadedTools | null = null;
  const prepare = (): void => {
    const { drawing, selection } = store.getState();
    const bounds = whole ? drawingBounds(drawing) : null;
    if (bounds !== null) camera = fitCamera(bounds, size());
    const scheme = screen.scheme();
    const look = { theme: themeOf(scheme), zoom: camera.zoom, selection };
    const hand = tools?.loaded() ?? null;
    picture.prepare({ camera, items: drawing, scheme, look, tools: hand, over: hand?.look() ?? null });
  };
  /** What a drag asks for is worked out between frames, up to where it is painted, so that no frame waits for it. */
  const sums = afterFrame(() => {
    tools?.now()?.step();
    prepare();
  });

  const draw = (): void => {
    frame = 0;
    if (tools?.now() != null) sums.ask();
    prepare();
    picture.paint();
    if (store.getState().zoom !== camera.zoom) store.actions.setZoom(camera.zoom);
    picker ??= loadPicker(() =>
      store.actions.warn(
        'The part of the program that tells what you point at could not be loaded: use the list of parts.',
      ),
    );
  };
  const redraw = (): void => {
    if (frame === 0) frame = requestAnimationFrame(draw);
  };
  const look = (next: Camera): void => {
    camera = next;
    whole = false;
    redraw();
  };

  const resize = (): void => {
    glass.fit();
    picture.forget();
    // A resized canvas is blank until it is painted again: paint before the browser shows it.
    draw();
  };
  const restyled = (): void => {
    picture.forget();
    redraw();
  };
  const screen = watchScreen(host, { resized: resize, restyled });

  const partAt = (at: Point): PartName | null =>
    picker?.now()?.partAt(store.getState().drawing, camera.zoom, toDrawing(camera, size(), at)) ?? null;
  const pick = (press: Press): void => {
    const { shiftKey, ctrlKey, metaKey } = press.keys;
    const more = shiftKey || ctrlKey || metaKey || store.getState().handwork.several;
    if (tools?.now()?.pick(press, more) === true) return;
    const part = partAt(press.at);
    if (!more) store.actions.select(part === null ? [] : [part]);
    else if (part !== null) store.actions.press(part, true);
  };
  const stopPointers = followPointers(canvas, {
    pan: (by) => look(panBy(camera, by)),
    zoom: (at, factor) => look(zoomAt(camera, size(), at, factor)),
    pick: (press) => picker?.whenThere(() => pick(press)),
    grab: (press) => tools?.now()?.grab(press) ?? null,
    begin: () => {
      atBegin = { camera, whole };
    },
    cancel: () => {
      ({ camera, whole } = atBegin);
      redraw();
    },
  });

  const unsubscribe = store.subscribe((state, before) => {
    const { slot } = state.derived;
    if (slot !== before.derived.slot && slot.ok && before.derived.slot.ok) {
      // A slot that moved along the neck stays where it was in the view, and the bridge with it.
      const by = slot.value.middle - before.derived.slot.value.middle;
      camera = { ...camera, centre: { ...camera.centre, y: camera.centre.y + by } };
    }
    if (LOOK.some((key) => state[key] !== before[key])) {
      redraw();
      if (tools?.now() != null) sums.ask();
    }
  });

  tools = loadTools(
    store,
    {
      canvas,
      camera: () => camera,
      size,
      scheme: screen.scheme,
      partAt,
      redraw,
      hold: () => {
        whole = false;
      },
    },
    redraw,
  );

  resize();
  return {
    showWhole: () => {
      whole = true;
      redraw();
    },
    zoomBy: (factor) => look(zoomAt(camera, size(), { x: size().width / 2, y: size().height / 2 }, factor)),
    panBy: (x, y) => look(panBy(camera, { x, y })),
    press: (key) => tools?.now()?.press(key) ?? false,
    unmount: () => {
      cancelAnimationFrame(frame);
      tools?.stop();
      unsubscribe();
      stopPointers();
      screen.stop();
      sums.stop();
      picker?.stop();
      canvas.remove();
    },
  };
};
