import type { ArcGeometry } from './arcGeometry';

/** Whether an arc passes the direction `angle` (radians, any turn) as seen from its centre; its ends count. */
export function arcPassesAngle(arc: ArcGeometry, angle: number): boolean {
  const turn = (angle - arc.startAngle) * Math.sign(arc.sweep);
  const full = 2 * Math.PI;
  return turn - full * Math.floor(turn / full) <= Math.abs(arc.sweep);
}
