import type { MountedDrawing } from '../../core/ports';

/** Pixels that an arrow key moves the view. */
const PAN_STEP = 40;

/** How much a key or a button magnifies. */
export const ZOOM_STEP = 1.25;

/** Moves the view as a key asks; false when the key means nothing to it. */
export const moveByKey = (view: MountedDrawing, key: string): boolean => {
  switch (key) {
    case 'ArrowLeft':
      view.panBy(PAN_STEP, 0);
      return true;
    case 'ArrowRight':
      view.panBy(-PAN_STEP, 0);
      return true;
    case 'ArrowUp':
      view.panBy(0, PAN_STEP);
      return true;
    case 'ArrowDown':
      view.panBy(0, -PAN_STEP);
      return true;
    case '+':
    case '=':
      view.zoomBy(ZOOM_STEP);
      return true;
    case '-':
      view.zoomBy(1 / ZOOM_STEP);
      return true;
    case '0':
      view.showWhole();
      return true;
    default:
      return false;
  }
};
