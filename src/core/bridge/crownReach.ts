/** Where in the thickness of the saddle one string must break, and what a straight crown leaves. */
export interface CrownPlace {
  /** Share of the thickness from the front face, 0 to 1 when it lies within the saddle at all. */
  readonly share: number;
  /** From the front face of the saddle, mm, square to it. */
  readonly fromFace: number;
  /** Whether the crown can be shaped to it with the land kept on both sides. */
  readonly reached: boolean;
  /** The nearest that the crown can be shaped to, from the front face, mm. */
  readonly shaped: number;
  /** How far the shaped crown still misses the mark along the centreline, mm: + too far back. */
  readonly left: number;
}

/**
 * Where a string that wants to break at `wanted` (y, along the centreline) has to do so in a saddle of this thickness whose
 * front face lies at `face` (y at that string) and whose slope is dy/dx. All mm. land: kept on each side.
 */
export const crownPlace = (
  wanted: number,
  face: number,
  thickness: number,
  slope: number,
  land: number,
): CrownPlace => {
  const stretch = Math.hypot(1, slope);
  const fromFace = (wanted - face) / stretch;
  const shaped = Math.min(Math.max(fromFace, Math.min(land, thickness / 2)), Math.max(thickness - land, thickness / 2));
  return {
    share: fromFace / thickness,
    fromFace,
    reached: Math.abs(shaped - fromFace) < 1e-9,
    shaped,
    left: (shaped - fromFace) * stretch,
  };
};

/** Thickness that a saddle must have for every string to break at its mark: worst miss both ways and the land, mm. */
export const thicknessNeeded = (worstMiss: number, slope: number, land: number): number =>
  (2 * worstMiss) / Math.hypot(1, slope) + 2 * land;
