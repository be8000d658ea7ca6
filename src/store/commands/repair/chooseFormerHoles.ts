import { createDerive } from '../../../core/derive/createDerive';
import type { FormerEach, FormerHoles } from '../../../core/document/repairTypes';
import type { Project } from '../../../core/document/types';
import { formerHoles } from '../../../core/repair/formerHoles';
import { rowFrom } from '../../../core/repair/fromBridge';
import { failed, ok, type Result } from '../../../core/result';
import { withRepair } from './withRepair';

const NOWHERE = { front: 0, aside: 0, turn: 0 } as const;

/** The holes of a row, each by its own place in the frame that the row is read in. */
const eachOf = (holes: FormerHoles, outline: NonNullable<Project['repair']>['footprint']['outline']): FormerEach => ({
  kind: 'each',
  each: formerHoles(holes, { outline, ...NOWHERE }).map(({ centre, diameter }, index) => ({
    id: `h${index + 1}`,
    ...centre,
    diameter,
  })),
});

/**
 * Old holes in a row, which starts as that of the bridge drawn now; each by its own place, from where the row put them; or
 * none. Codes: repair.none, and those of the bridge in place when it could not be computed.
 */
export const chooseFormerHoles = (project: Project, wanted: FormerHoles['kind'] | 'none'): Result<Project> =>
  withRepair(project, (repair) => {
    const { holes, footprint } = repair;
    if (wanted === 'none') return ok({ ...repair, holes: null });
    if (holes?.kind === wanted) return ok(repair);
    if (holes !== null && wanted === 'each')
      return ok({ ...repair, holes: { from: holes.from, ...eachOf(holes, footprint.outline) } });
    const { bridge, saddle } = createDerive()(project);
    if (!bridge.ok || !saddle.ok) return failed([bridge, saddle].flatMap((part) => (part.ok ? [] : part.issues)));
    const { strings, instrument } = project;
    const row: FormerHoles = {
      from: 'front',
      ...rowFrom(project.bridge, bridge.value, saddle.value, strings.length, instrument.spread.own),
    };
    return ok({
      ...repair,
      holes: wanted === 'row' ? row : { from: 'front', ...eachOf(row, footprint.outline) },
    });
  });
