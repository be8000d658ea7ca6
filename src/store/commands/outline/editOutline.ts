import { drawnFrom } from '../../../core/bridge/drawn/drawnFrom';
import { fieldAt } from '../../../core/document/fieldAt';
import type { DrawnOutline } from '../../../core/document/outlineTypes';
import type { Project } from '../../../core/document/types';
import { validateField } from '../../../core/document/validateField';
import type { PathEdit } from '../../../core/geom/edit/loop';
import { outlineFaults } from '../../../core/geom/edit/outlineFaults';
import type { Path } from '../../../core/geom/types';
import { failed, type Issue, ok, type Result } from '../../../core/result';
import { keepNodeAnchors } from '../dimensions/keepNodeAnchors';
import { seatOutline } from './seatOutline';

/** preview: what a drag shows meanwhile may cross itself, or be too small; commit: what is kept may not. */
export type EditMode = 'commit' | 'preview';

/** What an edit makes of the outline in hand: another path, what became of its nodes where that matters, its symmetry. */
export interface OutlineChange extends Partial<Omit<PathEdit, 'path'>> {
  readonly path: Path;
  readonly symmetric?: boolean;
}

/**
 * Edits the outline of the bridge. The outline of a shape becomes one that is drawn freely first. Afterwards the frame is
 * seated anew (seatOutline), and pinned dimensions follow their nodes. A fault that the outline had before does not stand in
 * the way. Codes: those of the edit, of outlineFaults, of seatOutline, and field.range when the front edge would come too
 * near to the slot or too far from it.
 */
export function editOutline(
  project: Project,
  edit: (outline: DrawnOutline) => Result<OutlineChange>,
  mode: EditMode = 'commit',
): Result<Project> {
  const { outline } = project.bridge;
  const drawn = outline.kind === 'drawn' ? ok(outline) : drawnFrom(outline);
  if (!drawn.ok) return drawn;
  const edited = edit(drawn.value);
  if (!edited.ok) return edited;
  const { path, went, symmetric = drawn.value.symmetric } = edited.value;
  const faults = mode === 'commit' ? newFaults(drawn.value.path, path) : [];
  if (faults.length > 0) return failed(faults);
  const seated = seatOutline(project, { kind: 'drawn', path, symmetric });
  if (!seated.ok) return seated;
  const range = slotIssues(project, seated.value);
  if (range.length > 0) return failed(range);
  return ok(went === undefined ? seated.value : keepNodeAnchors(seated.value, (node) => went[node] ?? null));
}

/** Edits the outline so that its nodes keep their numbers; see editOutline. */
export const editPlaces = (
  project: Project,
  edit: (outline: DrawnOutline) => Result<Path>,
  mode?: EditMode,
): Result<Project> =>
  editOutline(
    project,
    (outline) => {
      const path = edit(outline);
      return path.ok ? ok({ path: path.value }) : path;
    },
    mode,
  );

/** Faults of a kind that the outline did not have before. */
function newFaults(before: Path, after: Path): readonly Issue[] {
  const faults = outlineFaults(after);
  if (faults.length === 0) return faults;
  const old = new Set(outlineFaults(before).map(({ code }) => code));
  return faults.filter(({ code }) => !old.has(code));
}

/** Why the slot cannot lie that far behind the front edge; nothing to say when it lies where it did. */
function slotIssues(before: Project, after: Project): readonly Issue[] {
  const { fromFront } = after.bridge.slot;
  const field = fromFront === before.bridge.slot.fromFront ? null : fieldAt(after, 'bridge.slot.fromFront');
  if (field === null) return [];
  const where = `The slot would begin ${Math.abs(fromFront).toFixed(2)} mm ${fromFront < 0 ? 'ahead of' : 'behind'} the front edge.`;
  return validateField(field, fromFront).map((each) => ({ ...each, message: `${where} ${each.message}` }));
}
