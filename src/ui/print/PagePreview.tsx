import { isBold, LINE_STYLES } from '../../core/drawing/lineStyles';
import type { Item } from '../../core/drawing/types';
import type { Page } from '../../core/sheets/types';
import { CAPITAL_HEIGHT } from '../../core/text/capitalHeight';
import { svgPath } from './svgPath';

interface PagePreviewProps {
  readonly page: Page;
  /** Read out in place of the picture. */
  readonly label: string;
}

/** One page as it will print, from the very items that the PDF is made of. */
export function PagePreview({ page, label }: PagePreviewProps) {
  return (
    <svg className="page" viewBox={`0 0 ${page.width} ${page.height}`} role="img" aria-label={label}>
      {page.items.map((item) => (
        <PageItem key={item.id} item={item} />
      ))}
    </svg>
  );
}

function PageItem({ item }: { readonly item: Item }) {
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
