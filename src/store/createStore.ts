import { createStore as createVanillaStore, type StoreApi } from 'zustand/vanilla';
import { createDerive } from '../core/derive/createDerive';
import { remember } from '../core/derive/remember';
import type { Derived } from '../core/derive/types';
import type { Hand, NutDatum, Project } from '../core/document/types';
import { buildDrawing } from '../core/drawing/buildDrawing';
import { drawFinishLine } from '../core/drawing/drawFinishLine';
import type { Item } from '../core/drawing/types';
import type { Path } from '../core/geom/types';
import type { Clock } from '../core/ports';
import type { LengthStyle } from '../core/units/formatLength';
import { type Actions, createActions, type Settle } from './createActions';
import { lengthStyle, readDevice } from './device';
import { EMPTY_HISTORY } from './history';
import { type DeriveAreas, keepAreas } from './keepAreas';
import type { AppState, Device, DeviceMemory } from './types';

/** What the store is given, so that it never reads a clock or a disk itself. */
export interface StoreNeeds {
  readonly start: Project;
  readonly clock: Pick<Clock, 'now'>;
  readonly memory: DeviceMemory;
  /** Answers later than the drawing; asked on Draw, and for a bridge with finish under its rim. */
  readonly deriveAreas: DeriveAreas;
}

/** The state of the app and the only ways to change it. */
export interface Store extends Pick<StoreApi<AppState>, 'getState' | 'getInitialState' | 'subscribe'> {
  readonly actions: Actions;
}

/** A store that shows `start`, with the settings that this device kept. */
export const createStore = ({ start, clock, memory, deriveAreas }: StoreNeeds): Store => {
  const derive = createDerive();
  const styleOf = remember((units: Device['units'], decimals: Device['millimetreDecimals'], inches: Device['inches']) =>
    lengthStyle({ units, millimetreDecimals: decimals, inches }),
  );
  const draw = remember((derived: Derived, hand: Hand, datum: NutDatum, style: LengthStyle) =>
    buildDrawing(derived, { hand, datum, style }),
  );
  const deriveOnce = remember((project: Project) => derive(project));

  const withFinish = remember((drawing: readonly Item[], line: readonly Path[], hand: Hand) =>
    line.length === 0 ? drawing : [...drawing, ...drawFinishLine(line, hand)],
  );
  const areasOf = keepAreas(deriveAreas, () => api.setState(({ project, device }) => settle(project, device)));

  const settle: Settle = (project, device) => {
    const derived = deriveOnce(project);
    const style = styleOf(device.units, device.millimetreDecimals, device.inches);
    const { hand, nut } = project.instrument;
    const plain = draw(derived, hand, nut.datum, style);
    const areas = device.station === 'draw' || project.bridge.rim > 0 ? areasOf(project, derived) : null;
    const drawing = areas?.ok === true ? withFinish(plain, areas.value.finishLine, hand) : plain;
    return { project, device, derived, areas, drawing };
  };

  const api = createVanillaStore<AppState>(() => ({
    ...settle(start, readDevice(memory.read())),
    history: EMPTY_HISTORY,
    selection: null,
    zoom: 0,
    saved: null,
    message: { kind: 'status', text: '', count: 0 },
  }));
  const { getState, getInitialState, subscribe } = api;
  return { getState, getInitialState, subscribe, actions: createActions(api, settle, clock, memory) };
};
