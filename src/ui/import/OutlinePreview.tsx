import { pathBounds } from '../../core/geom/pathBounds';
import type { Path } from '../../core/geom/types';
import { svgPath } from '../items/svgPath';

/** A path as a small picture that fills its box. */
export function OutlinePreview({ path, className }: { readonly path: Path; readonly className: string }) {
  const { minX, minY, maxX, maxY } = pathBounds(path);
  const edge = Math.max(maxX - minX, maxY - minY) * 0.04;
  const box = [minX - edge, minY - edge, maxX - minX + 2 * edge, maxY - minY + 2 * edge];
  return (
    <svg className={className} viewBox={box.join(' ')} aria-hidden="true">
      <path d={svgPath(path)} vectorEffect="non-scaling-stroke" style={path.closed ? undefined : { fill: 'none' }} />
    </svg>
  );
}
