import type { StoreApi } from 'zustand/vanilla';
import { fieldAt } from '../core/document/fieldAt';
import type { FieldValue } from '../core/document/fieldValue';
import { SHAPE_NAMES } from '../core/document/shapeNames';
import type { Hand, Project, ShapeName } from '../core/document/types';
import type { PartName } from '../core/drawing/types';
import { STRING_SETS } from '../core/intonation/stringSets';
import type { Clock } from '../core/ports';
import type { Issue, Result } from '../core/result';
import { showLength } from '../core/units/showLength';
import { choosePins } from './commands/choosePins';
import { chooseShape } from './commands/chooseShape';
import { chooseStringSet } from './commands/chooseStringSet';
import { setField } from './commands/setField';
import { setHand } from './commands/setHand';
import { lengthStyle } from './device';
import { recordStep, stepBack, stepForward } from './history';
import { stepLabel } from './stepLabel';
import type { AppState, Device, DeviceMemory } from './types';

/** Every change that the screen can ask for. Those that answer with issues changed nothing when there are any. */
export interface Actions {
  setField(path: string, value: FieldValue): readonly Issue[];
  /** Runs a command as one step with this label; answers with the reasons when it was refused. */
  change(label: string, command: (project: Project) => Result<Project>): readonly Issue[];
  setHand(hand: Hand): void;
  chooseStringSet(setId: string): void;
  chooseShape(shape: ShapeName): void;
  choosePins(wanted: boolean): void;
  /** Another project in place of this one, as one step that can be undone. */
  replaceProject(project: Project, label: string): void;
  /** The project in hand now lies in a file. */
  markSaved(): void;
  undo(): void;
  redo(): void;
  setDevice(change: Partial<Device>): void;
  select(part: PartName | null): void;
  setZoom(zoom: number): void;
  /** Tells the maker what happened. */
  say(text: string): void;
  /** Tells the maker what failed. */
  warn(text: string): void;
}

/** All that follows from the project and the device. */
export type Settle = (
  project: Project,
  device: Device,
) => Pick<AppState, 'project' | 'device' | 'derived' | 'areas' | 'drawing'>;

const sameContent = (one: Project, other: Project): boolean => JSON.stringify(one) === JSON.stringify(other);

export const createActions = (
  { getState, setState }: StoreApi<AppState>,
  settle: Settle,
  clock: Pick<Clock, 'now'>,
  memory: DeviceMemory,
): Actions => {
  const tell = (kind: 'status' | 'alert', text: string): void =>
    setState(({ message }) => ({ message: { kind, text, count: message.count + 1 } }));

  const goTo = (project: Project, change: Partial<AppState>): void =>
    setState((state) => ({ ...settle(project, state.device), ...change }));

  /** Runs a command as one step; a command that changes nothing leaves no step. */
  const run = (label: string, command: (project: Project) => Result<Project>): readonly Issue[] => {
    const { project: before, history } = getState();
    const result = command(before);
    if (!result.ok) return result.issues;
    if (sameContent(before, result.value)) return [];
    const about = { ...result.value.about, changed: clock.now() };
    const after: Project = { ...result.value, revision: before.revision + 1, about };
    goTo(after, { history: recordStep(history, { before, after, label }) });
    tell('status', label);
    return [];
  };

  const travel = (step: typeof stepBack, verb: string, side: 'before' | 'after'): void => {
    const moved = step(getState().history);
    if (moved === null) return;
    goTo(moved.step[side], { history: moved.history });
    tell('status', `${verb}: ${moved.step.label}`);
  };

  return {
    setField: (path, value) => {
      const { project, device } = getState();
      const style = lengthStyle(device);
      const field = fieldAt(project, path);
      const label = field === null ? path : stepLabel(field, value, style);
      const show = (mm: number): string => showLength(mm, style);
      return run(label, (before) => setField(before, { path, value, show }));
    },
    change: run,
    setHand: (hand) => {
      run(`Hand: ${hand}`, (project) => setHand(project, hand));
    },
    chooseStringSet: (setId) => {
      const name = STRING_SETS.find(({ id }) => id === setId)?.name ?? setId;
      run(`String set: ${name}`, (project) => chooseStringSet(project, setId));
    },
    chooseShape: (shape) => {
      run(`Bridge shape: ${SHAPE_NAMES[shape].toLowerCase()}`, (project) => chooseShape(project, shape));
    },
    choosePins: (wanted) => {
      run(wanted ? 'Bridge pins: with' : 'Bridge pins: without', (project) => choosePins(project, wanted));
    },
    replaceProject: (project, label) => {
      const { project: before, history } = getState();
      const step = { before, after: project, label };
      goTo(project, { history: recordStep(history, step), selection: null });
      tell('status', label);
    },
    markSaved: () => setState(({ project }) => ({ saved: project })),
    undo: () => travel(stepBack, 'Undone', 'before'),
    redo: () => travel(stepForward, 'Redone', 'after'),
    setDevice: (change) => {
      const device = { ...getState().device, ...change };
      setState(settle(getState().project, device));
      memory.write(JSON.stringify(device));
    },
    select: (selection) => setState({ selection }),
    setZoom: (zoom) => setState({ zoom }),
    say: (text) => tell('status', text),
    warn: (text) => tell('alert', text),
  };
};
