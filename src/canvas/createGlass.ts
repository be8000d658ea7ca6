import type { Bounds } from '../core/geom/types';
import { type Camera, toDrawing, type ViewSize } from './camera';

/** Paints the part of a view that lies in a box; whatever reaches out of it is cut off. */
export interface Painter {
  /** The unit is a millimetre of the drawing, and so is the box's. */
  drawing(context: CanvasRenderingContext2D, box: Bounds): void;
  /** The unit is a CSS pixel, and so is the box's. */
  over(box: Bounds): void;
}

/** The canvas of a view, as sharp as the screen is. */
export interface Glass {
  readonly canvas: HTMLCanvasElement;
  /** In CSS pixels. */
  readonly size: () => ViewSize;
  /** Takes the host's size and the screen's dots; what was painted is gone. */
  fit(): void;
  /**
   * Wipes boxes of the canvas, in CSS pixels, and paints each anew: millimetres through a camera, then screen pixels over
   * them. null: all of it.
   */
  paint(camera: Camera, boxes: readonly Bounds[] | null, painter: Painter): void;
}

/** A canvas at the top left of its host. */
export const createGlass = (host: HTMLElement): Glass => {
  const canvas = document.createElement('canvas');
  canvas.className = 'drawing-canvas';
  canvas.setAttribute('aria-hidden', 'true');
  host.append(canvas);
  const context = canvas.getContext('2d');
  let size = { width: 1, height: 1 };
  let dots = 1;
  return {
    canvas,
    size: () => size,
    fit: () => {
      size = { width: Math.max(host.clientWidth, 1), height: Math.max(host.clientHeight, 1) };
      dots = window.devicePixelRatio;
      canvas.width = Math.round(size.width * dots);
      canvas.height = Math.round(size.height * dots);
      canvas.style.width = `${size.width}px`;
      canvas.style.height = `${size.height}px`;
    },
    paint: (camera, boxes, { drawing, over }) => {
      if (context === null) return;
      const all = { minX: 0, minY: 0, maxX: size.width, maxY: size.height };
      for (const box of boxes ?? [all]) {
        // Whole dots: the edge of what is cut off must not blend.
        const [left, top] = [Math.floor(box.minX * dots), Math.floor(box.minY * dots)];
        const [right, bottom] = [Math.ceil(box.maxX * dots), Math.ceil(box.maxY * dots)];
        context.save();
        context.setTransform(1, 0, 0, 1, 0, 0);
        context.beginPath();
        context.rect(left, top, right - left, bottom - top);
        context.clip();
        context.clearRect(left, top, right - left, bottom - top);
        const scale = dots * camera.zoom;
        const [x, y] = [
          size.width / 2 - camera.centre.x * camera.zoom,
          size.height / 2 - camera.centre.y * camera.zoom,
        ];
        context.setTransform(scale, 0, 0, scale, dots * x, dots * y);
        const from = toDrawing(camera, size, { x: left / dots, y: top / dots });
        const to = toDrawing(camera, size, { x: right / dots, y: bottom / dots });
        drawing(context, { minX: from.x, minY: from.y, maxX: to.x, maxY: to.y });
        context.setTransform(dots, 0, 0, dots, 0, 0);
        over({ minX: left / dots, minY: top / dots, maxX: right / dots, maxY: bottom / dots });
        context.restore();
      }
    },
  };
};
