/** Two points nearer than this are one, mm: a thousandth of a micron above rounding, a millionth of what wood can show. */
export const COINCIDENT_MM = 1e-6;

/** How far the two radii of one arc may differ, mm: coordinates read back from a file are rounded no coarser than this. */
export const ARC_RADIUS_MM = 1e-6;

/** Below this an outline encloses nothing, mm², so that it has no centroid. */
export const NO_AREA_MM2 = 1e-9;

/** Widest turn of one cubic that stands for an arc, radians (30°): strays 3.7e-7 of the radius, 0.04 µm at 100 mm. */
export const ARC_TURN_PER_CUBIC = Math.PI / 6;
