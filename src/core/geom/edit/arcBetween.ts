import { distance } from '../points';
import type { Arc, Point } from '../types';

/** The centre lies `along` to the left of the way from a to b, seen with y up: where a clockwise minor arc has it. */
function arcAbout(a: Point, b: Point, along: number, clockwise: boolean): Arc {
  const chord = distance(a, b);
  const share = along / chord;
  const centre = { x: (a.x + b.x) / 2 - (b.y - a.y) * share, y: (a.y + b.y) / 2 + (b.x - a.x) * share };
  return { kind: 'arc', to: b, centre, clockwise };
}

/**
 * The arc of a radius from a to b, mm; `major`: the one that turns by more than half a circle. The centre lies
 * √(r² − c²/4) from the middle of the chord c (elementary geometry). A radius below half of the chord gives the half circle.
 */
export function arcOfRadius(a: Point, b: Point, radius: number, clockwise: boolean, major: boolean): Arc {
  const off = Math.sqrt(Math.max(0, radius ** 2 - distance(a, b) ** 2 / 4));
  return arcAbout(a, b, clockwise === major ? -off : off, clockwise);
}

/**
 * The arc from a to b that stands `sagitta` (mm, more than 0) off the middle of its chord c, on its outer side. With bulge
 * 2·sagitta/c = tan(turn/4) its centre lies c·(1 − bulge²)/(4·bulge) from that middle (elementary geometry).
 */
export function arcOfSagitta(a: Point, b: Point, sagitta: number, clockwise: boolean): Arc {
  const chord = distance(a, b);
  const bulge = (2 * sagitta) / chord;
  const off = (chord * (1 - bulge * bulge)) / (4 * bulge);
  return arcAbout(a, b, clockwise ? off : -off, clockwise);
}
