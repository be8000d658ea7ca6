import { fieldAt } from '../document/fieldAt';
import { withFieldValue } from '../document/fieldValue';
import type { Project } from '../document/types';
import { validateField } from '../document/validateField';
import { type Designed, designedAgain } from './designed';
import type { Finding } from './finding';
import { findingsOf } from './findingsOf';
import type { DesignCheck, Mend } from './types';
import { downward } from './upward';

const RANK: Readonly<Record<DesignCheck['verdict'], number>> = { good: 0, look: 1, wrong: 2 };
const FROM_FRONT = 'bridge.slot.fromFront';

/** The project with the figures of a mend; null when a field does not take one of them. */
const withMend = (project: Project, { set }: Mend): Project | null => {
  let mended = project;
  for (const { path, value } of set) {
    const field = fieldAt(mended, path);
    if (field === null || validateField(field, value).length > 0) return null;
    mended = withFieldValue(mended, path, value);
  }
  return mended;
};

/** What a mend makes of the other checks: null where it does not cure its own, else those that it spoils. */
const spoilt = (designed: Designed, before: readonly Finding[], id: string, mend: Mend): readonly Finding[] | null => {
  const project = withMend(designed.project, mend);
  if (project === null) return null;
  const again = designedAgain(designed, project);
  if (!again.bridge.ok) return null;
  const after = findingsOf(again);
  // What is not asked any more is good.
  const rank = (of: readonly Finding[], name: string): number =>
    RANK[of.find((each) => each.id === name)?.verdict ?? 'good'];
  if (rank(after, id) > 0) return null;
  return after.filter((each) => RANK[each.verdict] > rank(before, each.id));
};

/** The same mend with the slot, and with it the pins, moved toward the front edge by what the pins lack at the back. */
const withRoomBehind = (mend: Mend, { lengths: [wall = 0, limit = 0], verdict }: Finding, fromFront: number): Mend => {
  const value = downward(fromFront - limit + (verdict === 'wrong' ? -wall : wall));
  return {
    label: `${mend.label}, front edge to slot {${mend.lengths.length}}`,
    lengths: [...mend.lengths, value],
    set: [...mend.set, { path: FROM_FRONT, value }],
  };
};

/** The first of the mends tried that makes the check good and no other worse; null when none does. */
export const mendThatServes = (
  designed: Designed,
  findings: readonly Finding[],
  id: string,
  tries: readonly Mend[],
): Mend | null => {
  for (const mend of tries) {
    const spoils = spoilt(designed, findings, id, mend);
    if (spoils?.length === 0) return mend;
    const edge = spoils?.find((each) => each.id === 'pins-edge');
    if (edge === undefined || mend.set.some(({ path }) => path === FROM_FRONT)) continue;
    const roomier = withRoomBehind(mend, edge, designed.project.bridge.slot.fromFront);
    if (spoilt(designed, findings, id, roomier)?.length === 0) return roomier;
  }
  return null;
};
