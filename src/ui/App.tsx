import { type ComponentType, lazy, Suspense } from 'react';
import type { Station } from '../store/types';
import { DrawingView } from './drawing/DrawingView';
import { KeepDrafts } from './fields/KeepDrafts';
import { Header } from './frame/Header';
import { AlertBar, StatusBar } from './frame/Messages';
import { STATION_PANEL, StationTabs, tabId } from './frame/StationTabs';
import { useShortcuts } from './frame/useShortcuts';
import { type Services, ServicesContext } from './services';
import { MeasureStation } from './stations/MeasureStation';
import { MeasureView } from './stations/MeasureView';
import { useAfterFirstFrame } from './useAfterFirstFrame';
import { useFileWork } from './useFileWork';
import { useStore } from './useStore';
import './style/fields.css';
import './style/measure.css';
import './style/drawing.css';

const DrawStation = lazy(async () => ({ default: (await import('./draw/DrawStation')).DrawStation }));
const PrintStation = lazy(async () => ({ default: (await import('./print/PrintStation')).PrintStation }));
const PrintPages = lazy(async () => ({ default: (await import('./print/PrintPages')).PrintPages }));
const PlaceStation = lazy(async () => ({ default: (await import('./place/PlaceStation')).PlaceStation }));
const PlaceView = lazy(async () => ({ default: (await import('./place/PlaceView')).PlaceView }));
const RecordStation = lazy(async () => ({ default: (await import('./record/RecordStation')).RecordStation }));
const RecordView = lazy(async () => ({ default: (await import('./record/RecordView')).RecordView }));
const NumbersPanel = lazy(async () => ({ default: (await import('./numbers/NumbersPanel')).NumbersPanel }));
const BeginStrip = lazy(async () => ({ default: (await import('./files/BeginStrip')).BeginStrip }));

const FIELDS: Readonly<Record<Station, ComponentType>> = {
  measure: MeasureStation,
  draw: DrawStation,
  print: PrintStation,
  place: PlaceStation,
  record: RecordStation,
};

const PICTURE: Readonly<Record<Station, ComponentType>> = {
  measure: MeasureView,
  draw: DrawingView,
  print: PrintPages,
  place: PlaceView,
  record: RecordView,
};

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
  const painted = useAfterFirstFrame();
  const Fields = FIELDS[station];
  const Picture = PICTURE[station];
  return (
    <div className="screen">
      <Header work={work} />
      <AlertBar />
      <main className="sheet">
        <StationTabs />
        <div role="tabpanel" id={STATION_PANEL} className="station" aria-labelledby={tabId(station)}>
          <KeepDrafts key={project}>
            <Suspense fallback={null}>{painted && <Fields />}</Suspense>
          </KeepDrafts>
        </div>
        <Suspense fallback={<section className="pages" />}>
          <Picture />
        </Suspense>
        <Suspense fallback={<aside className="numbers" />}>
          {painted ? <NumbersPanel /> : <aside className="numbers" />}
        </Suspense>
      </main>
      <StatusBar />
      {painted && <Begin />}
    </div>
  );
}

/** How a work is begun, once there is a drawing. */
function Begin() {
  const drawn = useStore((state) => state.zoom > 0);
  return <Suspense fallback={null}>{drawn && <BeginStrip />}</Suspense>;
}
