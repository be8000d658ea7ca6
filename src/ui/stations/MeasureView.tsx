import { Suspense, useState } from 'react';
import { DrawingView } from '../drawing/DrawingView';
import { RadioRow } from '../fields/RadioRow';
import { lazyPanel } from '../lazyPanels';

const CompensationView = lazyPanel('CompensationView');
const CentsView = lazyPanel('CentsView');

const VIEWS = [
  { value: 'bridge', label: 'Bridge' },
  { value: 'compensation', label: 'Compensation' },
  { value: 'cents', label: 'Cents by fret' },
] as const;

/** The bridge as it is being measured for, or what the strings make of its saddle. */
export function MeasureView() {
  const [view, setView] = useState<(typeof VIEWS)[number]['value']>('bridge');
  return (
    <div className="measure-view">
      <RadioRow label="Picture" value={view} choices={VIEWS} choose={setView} />
      {view === 'bridge' ? (
        <DrawingView />
      ) : (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: pictures larger than the view are scrolled by keys
        <section className="plots" aria-label="Pictures" tabIndex={0}>
          <Suspense fallback={null}>{view === 'compensation' ? <CompensationView /> : <CentsView />}</Suspense>
        </section>
      )}
    </div>
  );
}
