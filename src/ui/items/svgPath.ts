import { arcGeometry } from '../../core/geom/arcGeometry';
import type { Path, Point } from '../../core/geom/types';

const at = ({ x, y }: Point): string => `${Number(x.toFixed(4))} ${Number(y.toFixed(4))}`;

/** A path as the `d` of an SVG path, mm; arcs stay arcs. */
export const svgPath = ({ start, segments, closed }: Path): string => {
  const parts = [`M ${at(start)}`];
  let from = start;
  for (const segment of segments) {
    if (segment.kind === 'line') parts.push(`L ${at(segment.to)}`);
    else if (segment.kind === 'cubic') parts.push(`C ${at(segment.c1)} ${at(segment.c2)} ${at(segment.to)}`);
    else {
      const { radius, sweep } = arcGeometry(from, segment);
      const r = Number(radius.toFixed(4));
      const large = Math.abs(sweep) > Math.PI ? 1 : 0;
      parts.push(`A ${r} ${r} 0 ${large} ${segment.clockwise ? 1 : 0} ${at(segment.to)}`);
    }
    from = segment.to;
  }
  return closed ? `${parts.join(' ')} Z` : parts.join(' ');
};
