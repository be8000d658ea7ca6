import { compose, type Matrix, moved, scaled } from '../matrix';

/** What percentages are of, in the pixels or units in hand. */
export interface Viewport {
  readonly width: number;
  readonly height: number;
}

export interface ViewBox extends Viewport {
  readonly x: number;
  readonly y: number;
}

/** A viewBox, or null when there is none that can be used. */
export const readViewBox = (text: string | undefined): ViewBox | null => {
  const parts = (text ?? '')
    .slice(0, 400)
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [x, y, width, height] = parts;
  if (x === undefined || y === undefined || width === undefined || height === undefined) return null;
  return parts.length === 4 && parts.every(Number.isFinite) && width > 0 && height > 0 ? { x, y, width, height } : null;
};

const SHARES: Readonly<Record<string, number>> = { Min: 0, Mid: 0.5, Max: 1 };

/**
 * From the units of a viewBox to those of the window that it is fitted into, by preserveAspectRatio ("xMidYMid meet" when
 * it does not say; SVG 2, 8.2).
 */
export const viewBoxMatrix = (box: ViewBox, window: Viewport, aspect: string | undefined): Matrix => {
  const [across, down] = [window.width / box.width, window.height / box.height];
  const kept = /^\s*(?:defer\s+)?(?:none|x(Min|Mid|Max)Y(Min|Mid|Max))(?:\s+(meet|slice))?\s*$/.exec(aspect ?? '');
  if (kept !== null && kept[1] === undefined) return compose(scaled(across, down), moved(-box.x, -box.y));
  const factor = kept?.[3] === 'slice' ? Math.max(across, down) : Math.min(across, down);
  const x = (window.width - box.width * factor) * (SHARES[kept?.[1] ?? 'Mid'] ?? 0);
  const y = (window.height - box.height * factor) * (SHARES[kept?.[2] ?? 'Mid'] ?? 0);
  return compose(moved(x, y), compose(scaled(factor, factor), moved(-box.x, -box.y)));
};
