/** What a drawing file may hold. A bridge's takes a few kilobytes; all figures are common practice, no source. */
export const IMPORT_LIMITS = {
  /** Bytes. */
  fileSize: 10_000_000,
  /** Elements or blocks within one another. */
  depth: 100,
  /** Elements of an SVG, entities of a DXF, each time that they are drawn. */
  elements: 50_000,
  /** Lines, arcs and curves of all paths. */
  segments: 200_000,
  /** Of one outline that can be taken. */
  outlineSegments: 2000,
  /** Characters of the path data of one SVG element. */
  pathData: 2_000_000,
  /** Characters that names declared by the file itself may stand for, in all. */
  expansion: 100_000,
  /** Outlines that are listed. */
  listed: 40,
} as const;
