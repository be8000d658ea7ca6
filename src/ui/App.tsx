import { lazy, Suspense } from 'react';
import type { Station } from '../store/types';
import { DrawingView } from './drawing/DrawingView';
import { KeepDrafts } from './fields/KeepDrafts';
import { Header } from './frame/Header';
import { AlertBar, StatusBar } from './frame/Messages';
import { STATION_PANEL, StationTabs, tabId } from './frame/StationTabs';
import { useShortcuts } from './frame/useShortcuts';
import { NumbersPanel } from './numbers/NumbersPanel';
import { type Services, ServicesContext } from './services';
import { MeasureStation } from './stations/MeasureStation';
import { MeasureView } from './stations/MeasureView';
import { useFileWork } from './useFileWork';
import { useStore } from './useStore';
import './style/fields.css';
import './style/measure.css';
import './style/numbers.css';
import './style/drawing.css';

const DrawStation = lazy(async () => ({ default: (await import('./draw/DrawStation')).DrawStation }));
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
          <KeepDrafts key={project}>
            <StationFields station={station} />
          </KeepDrafts>
        </div>
        <StationPicture station={station} />
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
      return (
        <Suspense fallback={null}>
          <DrawStation />
        </Suspense>
      );
    case 'print':
      return (
        <Suspense fallback={null}>
          <PrintStation />
        </Suspense>
      );
  }
}

function StationPicture({ station }: { readonly station: Station }) {
  switch (station) {
    case 'measure':
      return <MeasureView />;
    case 'draw':
      return <DrawingView />;
    case 'print':
      return (
        <Suspense fallback={<section className="pages" aria-label="Pages" />}>
          <PrintPages />
        </Suspense>
      );
  }
}
