import type { Point } from '../core/geom/types';
import type { Grab, Keys, Press } from './handTools';

/** What the pointers ask of the view; points in screen pixels from the top left of the canvas. */
export interface PointerWishes {
  pan(by: Point): void;
  zoom(at: Point, factor: number): void;
  /** A press that did not turn into a drag. */
  pick(press: Press): void;
  /** A press turns into a drag: what it drags, or null for the view. */
  grab(press: Press): Grab | null;
  /** A gesture begins: remember the view. */
  begin(): void;
  /** The gesture was broken off: as it was when it began. */
  cancel(): void;
}

/** Pixels that a pressed pointer may tremble before it drags: a hand on glass trembles more. */
const DRAG_THRESHOLD: Readonly<Record<string, number>> = { touch: 9, pen: 6 };
const MOUSE_THRESHOLD = 4;
/** Pixels of a wheel that count for one line or page of it. */
const WHEEL_PIXELS = [1, 16, 400] as const;
/** Change of magnification for a pixel of the wheel; a pinch on a touchpad comes as small steps with Control held. */
const WHEEL_RATE = { scroll: 0.0015, pinch: 0.01 } as const;

const middle = (one: Point, other: Point): Point => ({ x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 });
const apart = (one: Point, other: Point): number => Math.hypot(one.x - other.x, one.y - other.y);
const keysOf = ({ shiftKey, altKey, ctrlKey, metaKey }: MouseEvent): Keys => ({ shiftKey, altKey, ctrlKey, metaKey });

/** Turns wheel, drag and pinch on a canvas into wishes, until the returned function is called. */
export const followPointers = (canvas: HTMLElement, wishes: PointerWishes): (() => void) => {
  const pressed = new Map<number, Point>();
  let dragging = false;
  let grabbed: Grab | null = null;
  let start: Press = {
    at: { x: 0, y: 0 },
    by: 'mouse',
    keys: { shiftKey: false, altKey: false, ctrlKey: false, metaKey: false },
  };
  let main = true;
  const stop = new AbortController();

  const place = (event: MouseEvent): Point => {
    const { left, top } = canvas.getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  };
  const letGo = (): void => {
    grabbed?.cancel();
    grabbed = null;
  };
  const breakOff = (): void => {
    if (pressed.size === 0) return;
    letGo();
    if (dragging) wishes.cancel();
    const ids = [...pressed.keys()];
    pressed.clear();
    dragging = false;
    for (const id of ids) if (canvas.hasPointerCapture(id)) canvas.releasePointerCapture(id);
  };

  const down = (event: PointerEvent): void => {
    if (pressed.size === 0) {
      wishes.begin();
      start = { at: place(event), by: event.pointerType, keys: keysOf(event) };
      main = event.button === 0;
    } else {
      // A second finger moves the view, and what the first one dragged goes back.
      letGo();
      dragging = true;
    }
    pressed.set(event.pointerId, place(event));
    canvas.setPointerCapture(event.pointerId);
    if (event.button === 1) event.preventDefault();
  };

  const move = (event: PointerEvent): void => {
    const before = pressed.get(event.pointerId);
    if (before === undefined) return;
    const now = place(event);
    if (!dragging) {
      if (apart(start.at, now) < (DRAG_THRESHOLD[start.by] ?? MOUSE_THRESHOLD)) return;
      dragging = true;
      grabbed = main ? wishes.grab(start) : null;
    }
    pressed.set(event.pointerId, now);
    if (grabbed !== null) {
      grabbed.move(now, keysOf(event));
      return;
    }
    const other = [...pressed].find(([id]) => id !== event.pointerId)?.[1];
    if (other === undefined) {
      wishes.pan({ x: now.x - before.x, y: now.y - before.y });
      return;
    }
    const [from, to] = [middle(before, other), middle(now, other)];
    wishes.pan({ x: to.x - from.x, y: to.y - from.y });
    wishes.zoom(to, apart(now, other) / Math.max(apart(before, other), 1));
  };

  const up = (event: PointerEvent): void => {
    if (!pressed.delete(event.pointerId)) return;
    if (pressed.size > 0) return;
    grabbed?.drop();
    grabbed = null;
    if (!dragging && main) wishes.pick({ ...start, keys: keysOf(event) });
    dragging = false;
  };
  const lost = (event: PointerEvent): void => {
    if (pressed.has(event.pointerId)) breakOff();
  };

  const wheel = (event: WheelEvent): void => {
    event.preventDefault();
    const rate = event.ctrlKey ? WHEEL_RATE.pinch : WHEEL_RATE.scroll;
    wishes.zoom(place(event), Math.exp(-event.deltaY * (WHEEL_PIXELS[event.deltaMode] ?? 1) * rate));
  };

  const { signal } = stop;
  canvas.addEventListener('pointerdown', down, { signal });
  canvas.addEventListener('pointermove', move, { signal });
  canvas.addEventListener('pointerup', up, { signal });
  canvas.addEventListener('pointercancel', breakOff, { signal });
  canvas.addEventListener('lostpointercapture', lost, { signal });
  canvas.addEventListener('wheel', wheel, { signal, passive: false });
  window.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'Escape' || pressed.size === 0) return;
      // The gesture alone is broken off: what was chosen stays.
      event.stopPropagation();
      breakOff();
    },
    { signal, capture: true },
  );
  window.addEventListener('blur', breakOff, { signal });
  return () => stop.abort();
};
