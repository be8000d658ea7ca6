import { handed } from '../../core/drawing/handed';
import type { PartName } from '../../core/drawing/types';
import type { Point } from '../../core/geom/types';
import type { KeyPress } from '../../core/ports';
import { moveParts } from '../../store/commands/hand/moveParts';
import { partsInWords } from '../../store/commands/hand/partsInWords';
import type { Store } from '../../store/createStore';

/** A pause this long, ms, ends a burst of nudges: what follows is another step. */
const PAUSE = 700;

/** The way of each arrow as it is seen. */
const WAYS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** mm that one press moves: with Shift a whole one, with Alt a hundredth, else a tenth. */
const stepOf = ({ shiftKey, altKey }: KeyPress): number => (shiftKey ? 1 : altKey ? 0.01 : 0.1);

const tidy = (mm: number): number => Math.round(mm * 1e6) / 1e6;

const wayInWords = ({ x, y }: Point): string => {
  const parts = [
    ...(x === 0 ? [] : [`${Math.abs(x)} mm to the ${x > 0 ? 'treble' : 'bass'} side`]),
    ...(y === 0 ? [] : [`${Math.abs(y)} mm toward the ${y > 0 ? 'tail' : 'nut'}`]),
  ];
  return parts.length === 0 ? 'back where it was' : parts.join(', ');
};

interface Burst {
  readonly selection: readonly PartName[];
  readonly name: string;
  readonly at: number;
  readonly count: number;
  readonly moved: Point;
}

/** Moves what is chosen by the arrow keys; presses without a pause are one step. Answers false for any other key. */
export const createNudge = ({ actions, getState }: Store): ((key: KeyPress) => boolean) => {
  let burst: Burst = { selection: [], name: '', at: Number.NEGATIVE_INFINITY, count: 0, moved: { x: 0, y: 0 } };
  return (key) => {
    const way = WAYS[key.key];
    const { selection, project, history } = getState();
    if (way === undefined || selection.length === 0 || key.ctrlKey || key.metaKey) return false;
    const size = stepOf(key);
    const by = handed(project.instrument.hand, { x: way.x * size, y: way.y * size });
    const names = partsInWords(selection);
    const now = performance.now();
    const goesOn = now - burst.at < PAUSE && burst.selection === selection && history.past.at(-1)?.burst === burst.name;
    const count = burst.count + 1;
    const before = goesOn ? burst.moved : { x: 0, y: 0 };
    const moved = { x: tidy(before.x + by.x), y: tidy(before.y + by.y) };
    const name = goesOn ? burst.name : `nudge ${count}`;
    const [issue] = actions.change(
      `Move ${names}: ${wayInWords(moved)}`,
      (present) => moveParts(present, selection, by),
      name,
    );
    if (issue === undefined) burst = { selection, name, at: now, count, moved };
    else actions.say(issue.message);
    return true;
  };
};
