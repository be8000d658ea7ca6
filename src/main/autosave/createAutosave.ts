import type { Project } from '../../core/document/types';
import type { Autosave, Clock, KeepState, Library, NewId } from '../../core/ports';
import type { Store } from '../../store/createStore';
import { beside } from './beside';

/** Writing begins this long after the last change, and this long after the first at the latest, ms: it is to be done in a second. */
const PAUSE = 300;
const LATEST = 600;

/** What autosave is handed. */
export interface AutosaveNeeds {
  readonly store: Pick<Store, 'getState' | 'subscribe'> & {
    readonly actions: Pick<Store['actions'], 'replaceProject' | 'warn'>;
  };
  readonly library: Library;
  readonly clock: Pick<Clock, 'now'>;
  readonly newId: NewId;
  /** The project that this visit began with: the demo, or what the library had. */
  readonly start: Project;
  /** Whether the library had it. */
  readonly opened: boolean;
  /** Holds what was not kept yet when the page was left, which a database is too slow for; '' for nothing. */
  readonly pending: { write(text: string): void };
  readonly encode: (project: Project) => string;
  /** Remembers which project is in hand for the next visit. */
  readonly last: { write(id: string): void };
  /** Asks the browser not to clear what is kept. */
  readonly askToLast: () => void;
  /** What could not be opened at the start; null when all went well. */
  readonly unread: { readonly id: string; readonly reason: string } | null;
}

/** Keeps every committed change of the project in hand in the library. */
export const createAutosave = ({
  store,
  library,
  clock,
  newId,
  start,
  opened,
  last,
  askToLast,
  unread,
  pending,
  encode,
}: AutosaveNeeds): Autosave & { flush(): void; leave(): void } => {
  const listeners = new Set<() => void>();
  let state: KeepState = unread === null ? { kind: 'kept', at: null } : { kind: 'unreadable', ...unread };
  /** The project as the library has it, as far as this tab knows. */
  let kept: Project = start;
  /** Revisions that the library had when this tab last looked, by id. */
  const bases = new Map<string, number>(opened ? [[start.id, start.revision]] : []);
  /** The revision with which a project came into hand that this tab did not know yet: from the library, or from a file. */
  const came = new Map<string, number>();
  /** Whether what this tab left behind still lies there; another tab's is not this one's to clear. */
  let left = store.getState().project !== start;
  /** What was put aside for another project before it was kept. */
  let aside: readonly Project[] = [];
  let asked = false;
  let soon: ReturnType<typeof setTimeout> | undefined;
  let latest: ReturnType<typeof setTimeout> | undefined;
  let running = false;

  const tell = (next: KeepState): void => {
    state = next;
    for (const listener of [...listeners]) listener();
  };
  const clear = (): void => {
    clearTimeout(soon);
    clearTimeout(latest);
    [soon, latest] = [undefined, undefined];
  };

  /** What a writing of a project stands on. A file older than what the library has stands on no state of it. */
  const baseOf = async (id: string): Promise<number | null> => {
    const known = bases.get(id);
    if (known !== undefined) return known;
    return (await library.entry(id)).ok ? (came.get(id) ?? null) : null;
  };

  const leaveBehind = (text: string): void => {
    if (text === '' && !left) return;
    pending.write(text);
    left = text !== '';
  };

  const keep = async (): Promise<void> => {
    clear();
    if (running) return;
    running = true;
    try {
      // More may have changed while one state was being written.
      for (;;) {
        const [put] = aside;
        const project = put ?? store.getState().project;
        if (put === undefined && (project === kept || state.kind === 'conflict')) break;
        if (state.kind !== 'keeping') tell({ kind: 'keeping' });
        const done = await library.save(project, await baseOf(project.id));
        if (done.ok) {
          bases.set(project.id, project.revision);
          if (put === undefined) {
            kept = project;
            last.write(project.id);
            leaveBehind('');
          } else aside = aside.slice(1);
          if (!asked) askToLast();
          asked = true;
          tell({ kind: 'kept', at: clock.now() });
          continue;
        }
        const [issue] = done.issues;
        if (issue?.code === 'library.conflict' && put !== undefined) {
          aside = [beside(put, newId()), ...aside.slice(1)];
          continue;
        }
        if (issue?.code === 'library.conflict') {
          const other = await library.entry(project.id);
          if (other.ok) return tell({ kind: 'conflict', other: other.value });
        }
        return tell({
          kind: 'not-kept',
          code: issue?.code ?? 'library.closed',
          reason: issue?.message ?? 'This browser does not let the page keep anything. Save your work to a file.',
        });
      }
    } catch (error) {
      const said = error instanceof Error ? error.message : String(error);
      tell({ kind: 'not-kept', code: 'library.closed', reason: `It could not be kept (${said}). Save to a file.` });
    } finally {
      running = false;
    }
  };
  const flush = (): void => {
    if (aside.length > 0 || store.getState().project !== kept) void keep();
  };
  const later = (): void => {
    clearTimeout(soon);
    soon = setTimeout(flush, PAUSE);
    latest ??= setTimeout(flush, LATEST);
  };

  let before = store.getState().project;
  const notice = (): void => {
    const { project } = store.getState();
    if (project === before) return;
    if (project.id !== before.id && before !== kept && state.kind !== 'conflict') aside = [...aside, before];
    if (project.id !== before.id && !came.has(project.id)) came.set(project.id, project.revision);
    before = project;
    if (state.kind === 'conflict' && state.other.id !== project.id) tell({ kind: 'kept', at: null });
    if (state.kind === 'unreadable') tell({ kind: 'kept', at: null });
    later();
  };
  store.subscribe(notice);
  // Another tab that keeps the same project is told of at once, not only when this one is changed.
  library.watch(async () => {
    const { id } = store.getState().project;
    const base = bases.get(id);
    if (running || base === undefined || state.kind === 'conflict') return;
    const there = await library.entry(id);
    if (there.ok && !running && bases.get(id) === base && there.value.revision !== base)
      tell({ kind: 'conflict', other: there.value });
  });
  // What was changed before this was loaded.
  if (before !== kept) later();

  return {
    state: () => state,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    retry: () => void keep(),
    flush,
    leave: () => {
      const { project } = store.getState();
      if (project === kept) return;
      // What the maker has not chosen between yet is not lost: this tab’s opens next, beside the other’s.
      leaveBehind(encode(state.kind === 'conflict' ? beside(project, newId()) : project));
      flush();
    },
    leaveUnread: () => {
      if (state.kind === 'unreadable') tell({ kind: 'kept', at: null });
    },
    keepBoth: () => {
      if (state.kind !== 'conflict') return;
      const { project } = store.getState();
      // It goes on under its new id alone.
      kept = project;
      tell({ kind: 'keeping' });
      store.actions.replaceProject(beside(project, newId()), 'Kept beside the other tab’s');
    },
    takeOther: async () => {
      if (state.kind !== 'conflict') return;
      const there = await library.read(state.other.id);
      if (!there.ok) return store.actions.warn(there.issues[0]?.message ?? 'It could not be read.');
      bases.set(there.value.id, there.value.revision);
      kept = there.value;
      leaveBehind('');
      tell({ kind: 'kept', at: null });
      store.actions.replaceProject(there.value, 'The other tab’s taken');
    },
  };
};
