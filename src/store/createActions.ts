import type { StoreApi } from 'zustand/vanilla';
import type { Field } from '../core/document/fieldTypes';
import type { FieldValue } from '../core/document/fieldValue';
import type { Hand, Project } from '../core/document/types';
import type { PartName } from '../core/drawing/types';
import { STRING_SETS } from '../core/intonation/stringSets';
import type { Clock } from '../core/ports';
import type { Issue, Result } from '../core/result';
import { showLength } from '../core/units/showLength';
import { chooseStringSet } from './commands/chooseStringSet';
import { setField } from './commands/setField';
import { setHand } from './commands/setHand';
import { lengthStyle } from './device';
import { recordStep, stepBack, stepForward } from './history';
import { stepLabel } from './stepLabel';
import type { AppState, Device, DeviceMemory, Handwork } from './types';

/** Every change that the screen can ask for. Those that answer with issues changed nothing when there are any. */
export interface Actions {
  setField(field: Field | null, value: FieldValue): readonly Issue[];
  /**
   * Runs a command as one step with this label; answers with the reasons when it was refused. Steps that follow one another
   * with the same `burst` are one.
   */
  change(label: string, command: (project: Project) => Result<Project>, burst?: string): readonly Issue[];
  /** Shows what a command would make of the project, and keeps nothing; null shows the project as it is again. */
  preview(command: ((project: Project) => Result<Project>) | null): readonly Issue[];
  setHand(hand: Hand): void;
  chooseStringSet(setId: string): void;
  /** Another project in place of this one, as one step that can be undone. */
  replaceProject(project: Project, label: string): void;
  /** The project in hand now lies in a file. */
  markSaved(): void;
  undo(): void;
  redo(): void;
  setDevice(change: Partial<Device>): void;
  select(parts: readonly PartName[]): void;
  /** Chooses a part, or lets go of it when it is the one chosen; `more`: beside those that are chosen. */
  press(part: PartName, more: boolean): void;
  setHandwork(change: Partial<Handwork>): void;
  setZoom(zoom: number): void;
  /** Tells the maker what happened. */
  say(text: string): void;
  /** Tells the maker what failed. */
  warn(text: string): void;
}

/** All that follows from the project and the device; moving: the project is a preview, another each frame. */
export type Settle = (
  project: Project,
  device: Device,
  moving?: boolean,
) => Pick<AppState, 'project' | 'device' | 'derived' | 'areas' | 'around' | 'drawing'>;

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
    setState((state) => ({ ...settle(project, state.device), preview: null, ...change }));

  /** Runs a command as one step; a command that changes nothing leaves no step. */
  const run: Actions['change'] = (label, command, burst) => {
    const { project: before, history } = getState();
    const result = command(before);
    if (!result.ok) return result.issues;
    if (sameContent(before, result.value)) return [];
    const about = { ...result.value.about, changed: clock.now() };
    const after: Project = { ...result.value, revision: before.revision + 1, about };
    goTo(after, { history: recordStep(history, { before, after, label, burst }) });
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
    setField: (field, value) => {
      const style = lengthStyle(getState().device);
      const label = field === null ? '' : stepLabel(field, value, style);
      const show = (mm: number): string => showLength(mm, style);
      return run(label, (before) => setField(before, { field, value, show }));
    },
    change: run,
    preview: (command) => {
      const { project } = getState();
      const result = command === null ? null : command(project);
      if (result?.ok === false) return result.issues;
      const preview = result?.value ?? null;
      setState(({ device }) => ({ ...settle(preview ?? project, device, preview !== null), project, preview }));
      return [];
    },
    setHand: (hand) => {
      run(`Hand: ${hand}`, (project) => setHand(project, hand));
    },
    chooseStringSet: (setId) => {
      const name = STRING_SETS.find(({ id }) => id === setId)?.name ?? setId;
      run(`String set: ${name}`, (project) => chooseStringSet(project, setId));
    },
    replaceProject: (project, label) => {
      const { project: before, history } = getState();
      const step = { before, after: project, label };
      goTo(project, { history: recordStep(history, step), selection: [] });
      tell('status', label);
    },
    markSaved: () => setState(({ project }) => ({ saved: project })),
    undo: () => travel(stepBack, 'Undone', 'before'),
    redo: () => travel(stepForward, 'Redone', 'after'),
    setDevice: (change) => {
      const device = { ...getState().device, ...change };
      setState({ ...settle(getState().project, device), preview: null });
      memory.write(JSON.stringify(device));
    },
    select: (selection) => setState({ selection }),
    press: (part, more) =>
      setState(({ selection, handwork }) => {
        const others = selection.filter((each) => each !== part);
        const several = more || handwork.several;
        const kept = several ? others : [];
        const letGo = selection.includes(part) && (several || others.length === 0);
        return { selection: letGo ? kept : [...kept, part] };
      }),
    setHandwork: (change) => setState(({ handwork }) => ({ handwork: { ...handwork, ...change } })),
    setZoom: (zoom) => setState({ zoom }),
    say: (text) => tell('status', text),
    warn: (text) => tell('alert', text),
  };
};
