import { describe, expect, it } from 'vitest';
import { fitCamera, panBy, toDrawing, toScreen, zoomAt } from '../../src/canvas/camera';

/** Computed here, by hand: a view of 800 by 600 pixels, 4 pixels to a millimetre, (100, 50) in its middle. */
const SIZE = { width: 800, height: 600 };
const CAMERA = { centre: { x: 100, y: 50 }, zoom: 4 };

describe('camera', () => {
  it('says which point of the drawing lies under a pixel', () => {
    expect(toDrawing(CAMERA, SIZE, { x: 400, y: 300 })).toEqual({ x: 100, y: 50 });
    // 400 px left of the middle at 4 px/mm is 100 mm, 300 px above is 75 mm.
    expect(toDrawing(CAMERA, SIZE, { x: 0, y: 0 })).toEqual({ x: 0, y: -25 });
  });

  it('says where a point of the drawing is seen', () => {
    // 10 mm right of the middle and 5 mm above it, at 4 px/mm: 40 px and 20 px.
    expect(toScreen(CAMERA, SIZE, { x: 110, y: 45 })).toEqual({ x: 440, y: 280 });
  });

  it('keeps the point under the pointer while it magnifies', () => {
    const at = { x: 700, y: 90 };
    const held = toDrawing(CAMERA, SIZE, at);
    for (const factor of [0.1, 0.8, 1, 1.25, 7]) {
      const next = zoomAt(CAMERA, SIZE, at, factor);
      const under = toDrawing(next, SIZE, at);
      expect(under.x).toBeCloseTo(held.x, 9);
      expect(under.y).toBeCloseTo(held.y, 9);
    }
    expect(zoomAt(CAMERA, SIZE, at, 2).zoom).toBe(8);
  });

  it('stops magnifying at both ends', () => {
    expect(zoomAt(CAMERA, SIZE, { x: 0, y: 0 }, 1e9).zoom).toBe(100);
    expect(zoomAt(CAMERA, SIZE, { x: 0, y: 0 }, 1e-9).zoom).toBe(0.25);
  });

  it('moves the drawing with the pointer', () => {
    expect(panBy(CAMERA, { x: 40, y: -20 })).toEqual({ centre: { x: 90, y: 55 }, zoom: 4 });
  });

  it('shows the whole drawing in the middle, whichever way it is long', () => {
    for (const bounds of [
      { minX: -90, maxX: 90, minY: 580, maxY: 670 },
      { minX: -10, maxX: 30, minY: 0, maxY: 900 },
    ]) {
      const camera = fitCamera(bounds, SIZE);
      const topLeft = toDrawing(camera, SIZE, { x: 0, y: 0 });
      const bottomRight = toDrawing(camera, SIZE, { x: 800, y: 600 });
      expect(topLeft.x).toBeLessThan(bounds.minX);
      expect(topLeft.y).toBeLessThan(bounds.minY);
      expect(bottomRight.x).toBeGreaterThan(bounds.maxX);
      expect(bottomRight.y).toBeGreaterThan(bounds.maxY);
      expect(camera.centre).toEqual({ x: (bounds.minX + bounds.maxX) / 2, y: (bounds.minY + bounds.maxY) / 2 });
    }
  });
});
