import { createStore as createVanillaStore, type StoreApi } from 'zustand/vanilla';
import { createDerive } from '../core/derive/createDerive';
import { remember } from '../core/derive/remember';
import type { Derived } from '../core/derive/types';
import type { Hand, NutDatum, Project } from '../core/document/types';
import { buildDrawing, type View } from '../core/drawing/buildDrawing';
import type { AroundItems } from '../core/drawing/drawAround';
import { drawFinishLine } from '../core/drawing/drawFinishLine';
import type { Item } from '../core/drawing/types';
import type { Path } from '../core/geom/types';
import type { Clock } from '../core/ports';
import type { LengthStyle } from '../core/units/formatLength';
import { type Actions, createActions, type Settle } from './createActions';
import { lengthStyle, readDevice } from './device';
import { EMPTY_HISTORY } from './history';
import { type DeriveAreas, keepAreas } from './keepAreas';
import type { FindAround } from './makeAround';
import type { AppState, Device, DeviceMemory } from './types';

/** What the store is given, so that it never reads a clock or a disk itself. */
export interface StoreNeeds {
  readonly start: Project;
  readonly clock: Pick<Clock, 'now'>;
  readonly memory: DeviceMemory;
  /** Answers later than the drawing; asked on Draw and Place, and for a bridge with finish under its rim. */
  readonly deriveAreas: DeriveAreas;
  /** Comes later than the drawing; null when it could not be loaded. arrived: called when more of it became known. */
  readonly loadAround: (arrived: () => void) => Promise<FindAround | null>;
}

/** The state of the app and the only ways to change it. */
export interface Store extends Pick<StoreApi<AppState>, 'getState' | 'getInitialState' | 'subscribe'> {
  readonly actions: Actions;
}

/** A store that shows `start`, with the settings that this device kept. */
export const createStore = ({ start, clock, memory, deriveAreas, loadAround }: StoreNeeds): Store => {
  const derive = createDerive();
  const styleOf = remember((units: Device['units'], decimals: Device['millimetreDecimals'], inches: Device['inches']) =>
    lengthStyle({ units, millimetreDecimals: decimals, inches }),
  );
  const viewOf = remember((hand: Hand, datum: NutDatum, style: LengthStyle): View => ({ hand, datum, style }));
  const draw = remember((derived: Derived, view: View) => buildDrawing(derived, view));
  const deriveOnce = remember((project: Project) => derive(project));

  const withFinish = remember((drawing: readonly Item[], line: readonly Path[], hand: Hand) =>
    line.length === 0 ? drawing : [...drawing, ...drawFinishLine(line, hand)],
  );
  const withAround = remember((drawing: readonly Item[], { under, over }: AroundItems) => [
    ...under,
    ...drawing,
    ...over,
  ]);
  let findAround: FindAround | null = null;
  const areasOf = keepAreas(deriveAreas, () => api.setState(again));

  const again = ({ project, preview, device }: AppState): Partial<AppState> => ({
    ...settle(preview ?? project, device, preview !== null),
    project,
  });
  const settle: Settle = (project, device, moving = false) => {
    const derived = deriveOnce(project);
    const style = styleOf(device.units, device.millimetreDecimals, device.inches);
    const { hand, nut } = project.instrument;
    const view = viewOf(hand, nut.datum, style);
    const plain = draw(derived, view);
    const wanted = device.station === 'draw' || device.station === 'place' || project.bridge.rim > 0;
    const areas = wanted ? areasOf(project, derived, moving) : null;
    const finished = areas?.ok === true ? withFinish(plain, areas.value.finishLine, hand) : plain;
    const found = findAround?.(project, derived, view) ?? null;
    const drawing = found === null ? finished : withAround(finished, found.items);
    return { project, device, derived, areas, around: found?.around ?? null, drawing };
  };

  const api = createVanillaStore<AppState>(() => ({
    ...settle(start, readDevice(memory.read())),
    history: EMPTY_HISTORY,
    preview: null,
    selection: [],
    handwork: { tool: 'move', measure: 'distance', several: false, snapping: true, picks: [] },
    zoom: 0,
    saved: null,
    message: { kind: 'status', text: '', count: 0 },
  }));
  const { getState, getInitialState, subscribe } = api;
  loadAround(() => api.setState(again)).then((found) => {
    findAround = found;
    if (found !== null) api.setState(again);
  });
  return { getState, getInitialState, subscribe, actions: createActions(api, settle, clock, memory) };
};
