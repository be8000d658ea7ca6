import { isBold, LINE_STYLES } from '../../core/drawing/lineStyles';
import type { Item } from '../../core/drawing/types';
import { CAPITAL_HEIGHT } from '../../core/text/capitalHeight';
import { svgPath } from './svgPath';

interface ItemsSvgProps {
  readonly className: string;
  /** mm */
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
  /** Read out in place of the picture. */
  readonly label: string;
}

/** A display list as one picture: a page as it will print, or a plot. */
export function ItemsSvg({ className, width, height, items, label }: ItemsSvgProps) {
  return (
    <svg className={className} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      {items.map((item) => (
        <OneItem key={item.id} item={item} />
      ))}
    </svg>
  );
}

function OneItem({ item }: { readonly item: Item }) {
  if (item.kind === 'path') {
    const { width, dash, fill } = LINE_STYLES[item.role];
    return (
      <path
        d={svgPath(item.path)}
        fill={fill === null ? 'none' : `rgb(${fill * 100}% ${fill * 100}% ${fill * 100}%)`}
        stroke="#000"
        strokeWidth={width}
        strokeLinejoin="round"
        strokeDasharray={dash.length === 0 ? undefined : dash.join(' ')}
      />
    );
  }
  const { at, angle, height, anchor, role, text } = item;
  const turn = angle === 0 ? undefined : `rotate(${(angle * 180) / Math.PI} ${at.x} ${at.y})`;
  return (
    <text
      x={at.x}
      y={at.y + (CAPITAL_HEIGHT / 2) * height}
      transform={turn}
      fontSize={height}
      fontWeight={isBold(role) ? 'bold' : 'normal'}
      textAnchor={anchor}
    >
      {text}
    </text>
  );
}
