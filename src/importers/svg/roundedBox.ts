import type { Path, Segment } from '../../core/geom/types';
import { ellipseArc } from '../ellipseArc';
import { applyMatrix, compose, type Matrix, moved, scaled } from '../matrix';

/** A rect of SVG under a matrix, its corners rounded by at most half of its sides; nothing where a side is not above 0 (SVG 2, 10.2). */
export const roundedBox = (
  matrix: Matrix,
  x: number,
  y: number,
  width: number,
  height: number,
  rx: number,
  ry: number,
): Path[] => {
  if (!(width > 0 && height > 0)) return [];
  const [wide, high] = [Math.min(rx, width / 2), Math.min(ry, height / 2)];
  const [right, foot] = [x + width, y + height];
  const round = wide > 0 && high > 0;
  const [across, down] = round ? [wide, high] : [0, 0];
  const line = (toX: number, toY: number): Segment => ({ kind: 'line', to: applyMatrix(matrix, { x: toX, y: toY }) });
  const corner = (centreX: number, centreY: number, quarter: number): Segment[] => {
    if (!round) return [];
    return ellipseArc(
      compose(matrix, compose(moved(centreX, centreY), scaled(wide, high))),
      (quarter * Math.PI) / 2,
      Math.PI / 2,
    );
  };
  return [
    {
      start: applyMatrix(matrix, { x: x + across, y }),
      segments: [
        line(right - across, y),
        ...corner(right - across, y + down, -1),
        line(right, foot - down),
        ...corner(right - across, foot - down, 0),
        line(x + across, foot),
        ...corner(x + across, foot - down, 1),
        line(x, y + down),
        ...corner(x + across, y + down, 2),
      ],
      closed: true,
    },
  ];
};
