import type { KeyboardEvent } from 'react';
import type { Station } from '../../store/types';
import { useServices } from '../services';
import { useMedia } from '../useMedia';
import { useStore } from '../useStore';

const STATIONS: readonly { readonly id: Station; readonly name: string }[] = [
  { id: 'measure', name: 'Measure' },
  { id: 'draw', name: 'Draw' },
  { id: 'print', name: 'Print' },
  { id: 'place', name: 'Place' },
  { id: 'record', name: 'Record' },
];

/** The id of the panel that the tabs control. */
export const STATION_PANEL = 'station-panel';

/** The id of a station's tab. */
export const tabId = (station: Station): string => `tab-${station}`;

/** The stations along the edge of the sheet, in the order of the work. Tabs after the WAI-ARIA practices. */
export function StationTabs() {
  const { actions } = useServices().store;
  const station = useStore((state) => state.device.station);
  const across = useMedia('(max-width: 899px)');

  const go = (to: Station): void => {
    actions.setDevice({ station: to });
    document.getElementById(tabId(to))?.focus();
  };
  const press = (event: KeyboardEvent): void => {
    const at = STATIONS.findIndex(({ id }) => id === station);
    const moves: Readonly<Record<string, number>> = {
      ArrowDown: at + 1,
      ArrowRight: at + 1,
      ArrowUp: at - 1,
      ArrowLeft: at - 1,
      Home: 0,
      End: STATIONS.length - 1,
    };
    const to = moves[event.key];
    const next = to === undefined ? undefined : STATIONS.at(to % STATIONS.length);
    if (next === undefined) return;
    event.preventDefault();
    go(next.id);
  };

  return (
    <div
      className="tabs"
      role="tablist"
      aria-label="Stations"
      aria-orientation={across ? 'horizontal' : 'vertical'}
      onKeyDown={press}
    >
      {STATIONS.map(({ id, name }) => (
        <button
          key={id}
          id={tabId(id)}
          type="button"
          role="tab"
          aria-selected={id === station}
          aria-controls={STATION_PANEL}
          tabIndex={id === station ? 0 : -1}
          onClick={() => actions.setDevice({ station: id })}
        >
          {name}
        </button>
      ))}
    </div>
  );
}
