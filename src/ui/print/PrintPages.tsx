import { ItemsSvg } from '../items/ItemsSvg';
import { SetPages } from './sets/SetPages';
import { useSetPreview } from './sets/useSetPreview';
import { useSheet } from './useSheet';

/** The pages as they will print: those of the instrument in hand, or of a set that is looked through. */
export function PrintPages() {
  const [, { kind }] = useSetPreview();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: pages larger than the view are scrolled by keys
    <section className="pages" aria-label="Pages" tabIndex={0}>
      {kind === 'closed' ? <OwnPages /> : <SetPages />}
    </section>
  );
}

function OwnPages() {
  const sheet = useSheet();
  return (
    <>
      {sheet.ok ? (
        sheet.value.document.pages.map(({ width, height, items }, index) => (
          <figure key={items[0]?.id ?? index}>
            <ItemsSvg
              className="page"
              width={width}
              height={height}
              items={items}
              label={`Page ${index + 1} of ${sheet.value.document.pages.length}: ${sheet.value.document.title}`}
            />
            <figcaption>
              Page {index + 1} of {sheet.value.document.pages.length}
            </figcaption>
          </figure>
        ))
      ) : (
        <p className="not-yet">{sheet.issues.map(({ message }) => message).join(' ')}</p>
      )}
    </>
  );
}
