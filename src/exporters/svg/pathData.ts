import { arcGeometry } from '../../core/geom/arcGeometry';
import type { Arc, Path, Point } from '../../core/geom/types';
import { plainNumber } from '../plainNumber';

/** Decimals of a millimetre in the file: a nanometre. */
const DECIMALS = 6;

/**
 * The most that an arc of the file turns. SVG tells an arc by its ends and radius, so that near half a turn the rounding of
 * the radius moves the centre by its square root: such arcs are written as two.
 */
const MOST_TURN = (2 * Math.PI) / 3;
const TURN_ROUNDING = 1e-9;

/** A length of the file, mm. */
export const svgNumber = (mm: number): string => plainNumber(mm, DECIMALS);

const at = ({ x, y }: Point): string => `${svgNumber(x)} ${svgNumber(y)}`;

const arcCommands = (from: Point, arc: Arc): readonly string[] => {
  const { radius, startAngle, sweep } = arcGeometry(from, arc);
  const count = Math.ceil(Math.abs(sweep) / MOST_TURN - TURN_ROUNDING);
  return Array.from({ length: Math.max(1, count) }, (_, index) => {
    const angle = startAngle + (sweep * (index + 1)) / count;
    const on = { x: arc.centre.x + radius * Math.cos(angle), y: arc.centre.y + radius * Math.sin(angle) };
    const to = index + 1 >= count ? arc.to : on;
    return `A ${svgNumber(radius)} ${svgNumber(radius)} 0 0 ${arc.clockwise ? 1 : 0} ${at(to)}`;
  });
};

/** The `d` of a path, mm: arcs as A, cubics as C. @throws RangeError when a coordinate is not finite */
export const pathData = ({ start, segments, closed }: Path): string => {
  const parts = [`M ${at(start)}`];
  let from = start;
  for (const segment of segments) {
    if (segment.kind === 'line') parts.push(`L ${at(segment.to)}`);
    else if (segment.kind === 'cubic') parts.push(`C ${at(segment.c1)} ${at(segment.c2)} ${at(segment.to)}`);
    else parts.push(...arcCommands(from, segment));
    from = segment.to;
  }
  return (closed ? [...parts, 'Z'] : parts).join(' ');
};
