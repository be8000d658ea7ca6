import type { PlotPicture } from '../../core/drawing/plots/types';
import { ItemsSvg } from '../items/ItemsSvg';

/** A plot with its title, as large as its words read well; null where it cannot be drawn. */
export function Picture({ plot }: { readonly plot: PlotPicture | null }) {
  if (plot === null) return <p className="not-yet">There is nothing to draw yet: see the design checks.</p>;
  const { title, summary, width, height, items } = plot;
  return (
    <figure className="picture" style={{ maxWidth: `${Math.round(width * 5.4)}px` }}>
      <h2>{title}</h2>
      <ItemsSvg className="plot" width={width} height={height} items={items} label={`${title}. ${summary}`} />
    </figure>
  );
}
