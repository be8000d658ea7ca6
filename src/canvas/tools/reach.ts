/** How near a pointer must come to a node or a handle to take it, screen pixels: a finger hides what it points at. */
const REACH: Readonly<Record<string, number>> = { touch: 18, pen: 10 };
const MOUSE_REACH = 8;

/** The reach of a mouse, pen or finger, screen pixels. */
export const reachOf = (by: string): number => REACH[by] ?? MOUSE_REACH;

/** How near something a dragged point must come to snap to it, screen pixels. */
export const SNAP_PIXELS = 6;
