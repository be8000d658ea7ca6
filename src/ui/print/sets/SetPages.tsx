import { useEffect, useRef } from 'react';
import type { SetOutline } from '../../../core/ports';
import { SelectRow } from '../../fields/SelectRow';
import { ItemsSvg } from '../../items/ItemsSvg';
import { useSetPreview } from './useSetPreview';

/** Where among the starts a page lies; none where instruments share pages. */
const placeOf = ({ starts }: SetOutline, index: number): number =>
  starts.reduce((found, { page }, place) => (page <= index ? place : found), 0);

/** A set before it is made: one page at a time, with the way to any instrument. */
export function SetPages() {
  const [preview, state] = useSetPreview();
  const bar = useRef<HTMLDivElement>(null);
  // On a narrow screen the pages lie below the button that opened them.
  useEffect(() => {
    bar.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  if (state.kind === 'closed') return null;
  const close = (
    <button type="button" onClick={preview.close}>
      {state.kind === 'laying' ? 'Cancel the preview' : 'Close the set'}
    </button>
  );
  if (state.kind === 'laying')
    return (
      <div ref={bar} className="set-bar">
        <progress aria-label="Laying out the set" value={state.share} max={1} />
        {close}
      </div>
    );
  if (state.kind === 'failed')
    return (
      <div ref={bar} className="set-bar">
        <p className="field-wrong">{state.message}</p>
        {close}
      </div>
    );
  const { outline, index, page } = state;
  const place = placeOf(outline, index);
  const name = outline.starts[place]?.name ?? 'shared pages';
  const turn = (by: number): void => void preview.turnTo(index + by);
  return (
    <>
      <div ref={bar} className="set-bar">
        {outline.starts.length > 1 && (
          <SelectRow
            label="Look at"
            value={String(place)}
            choices={outline.starts.map((start, at) => ({ value: String(at), label: start.name }))}
            choose={(chosen) => void preview.turnTo(outline.starts[Number(chosen)]?.page ?? 0)}
          />
        )}
        <div className="buttons">
          <button type="button" aria-disabled={index === 0} onClick={() => turn(-1)}>
            Page before
          </button>
          <button type="button" aria-disabled={index === outline.pages - 1} onClick={() => turn(1)}>
            Next page
          </button>
          {close}
        </div>
        <p aria-live="polite" className="set-place">
          Page {index + 1} of {outline.pages}: {name}
        </p>
      </div>
      {page !== null && (
        <figure>
          <ItemsSvg
            className="page"
            width={page.width}
            height={page.height}
            items={page.items}
            label={`Page ${index + 1} of ${outline.pages} of the set: ${name}`}
          />
        </figure>
      )}
    </>
  );
}
