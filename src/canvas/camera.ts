import type { Bounds, Point } from '../core/geom/types';

/** What the view shows: the drawing's point in the middle of it, mm, and screen pixels to a millimetre. */
export interface Camera {
  readonly centre: Point;
  readonly zoom: number;
}

/** Width and height of the view, screen pixels. */
export interface ViewSize {
  readonly width: number;
  readonly height: number;
}

/** From a whole guitar on a telephone to a hundredth of a millimetre in one pixel. */
const ZOOM = { least: 0.25, most: 100 } as const;

/** Part of the view kept free around a whole drawing. */
const MARGIN = 0.045;

const within = (zoom: number): number => Math.min(ZOOM.most, Math.max(ZOOM.least, zoom));

/** The camera that shows these bounds as large as the view allows. */
export const fitCamera = ({ minX, minY, maxX, maxY }: Bounds, { width, height }: ViewSize): Camera => {
  const free = 1 - 2 * MARGIN;
  const zoom = Math.min((width * free) / Math.max(maxX - minX, 1), (height * free) / Math.max(maxY - minY, 1));
  return { centre: { x: (minX + maxX) / 2, y: (minY + maxY) / 2 }, zoom: within(zoom) };
};

/** The drawing's point at a screen point, which is counted from the top left of the view. */
export const toDrawing = ({ centre, zoom }: Camera, { width, height }: ViewSize, at: Point): Point => ({
  x: centre.x + (at.x - width / 2) / zoom,
  y: centre.y + (at.y - height / 2) / zoom,
});

/** Where a point of the drawing is seen, screen pixels from the top left of the view. */
export const toScreen = ({ centre, zoom }: Camera, { width, height }: ViewSize, point: Point): Point => ({
  x: (point.x - centre.x) * zoom + width / 2,
  y: (point.y - centre.y) * zoom + height / 2,
});

/** Magnified by a factor, with the drawing's point under `at` kept where it is. */
export const zoomAt = (camera: Camera, size: ViewSize, at: Point, factor: number): Camera => {
  const zoom = within(camera.zoom * factor);
  const held = toDrawing(camera, size, at);
  return {
    zoom,
    centre: { x: held.x - (at.x - size.width / 2) / zoom, y: held.y - (at.y - size.height / 2) / zoom },
  };
};

/** The drawing pulled along by screen pixels: + x to the right, + y down. */
export const panBy = ({ centre, zoom }: Camera, by: Point): Camera => ({
  zoom,
  centre: { x: centre.x - by.x / zoom, y: centre.y - by.y / zoom },
});
