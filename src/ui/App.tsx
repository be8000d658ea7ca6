import { lazy, Suspense } from 'react';
import type { Station } from '../store/types';
import { DrawingView } from './drawing/DrawingView';
import { Header } from './frame/Header';
import { AlertBar, StatusBar } from './frame/Messages';
import { STATION_PANEL, StationTabs, tabId } from './frame/StationTabs';
import { useShortcuts } from './frame/useShortcuts';
import { NumbersPanel } from './numbers/NumbersPanel';
import { type Services, ServicesContext } from './services';
import { DrawStation } from './stations/DrawStation';
import { MeasureStation } from './stations/MeasureStation';
import { useFileWork } from './useFileWork';
import { useStore } from './useStore';
import './style/fields.css';
import './style/numbers.css';
import './style/drawing.css';

const PrintStation = lazy(async () => ({ default: (await import('./print/PrintStation')).PrintStation }));
const PrintPages = lazy(async () => ({ default: (await import('./print/PrintPages')).PrintPages }));

/** The whole screen. */
export function App({ services }: { readonly services: Services }) {
  return (
    <ServicesContext value={services}>
      <Screen />
    </ServicesContext>
  );
}

function Screen() {
  const work = useFileWork();
  useShortcuts(work);
  const station = useStore((state) => state.device.station);
  const project = useStore((state) => state.project.id);
  return (
    <div className="screen">
      <Header work={work} />
      <AlertBar />
      <main className="sheet">
        <StationTabs />
        <div role="tabpanel" id={STATION_PANEL} className="station" aria-labelledby={tabId(station)}>
          <StationFields key={project} station={station} />
        </div>
        {station === 'print' ? (
          <Suspense fallback={<section className="pages" aria-label="Pages" />}>
            <PrintPages />
          </Suspense>
        ) : (
          <DrawingView />
        )}
        <NumbersPanel />
      </main>
      <StatusBar />
    </div>
  );
}

function StationFields({ station }: { readonly station: Station }) {
  switch (station) {
    case 'measure':
      return <MeasureStation />;
    case 'draw':
      return <DrawStation />;
    case 'print':
      return (
        <Suspense fallback={null}>
          <PrintStation />
        </Suspense>
      );
  }
}
