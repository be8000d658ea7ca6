import { expose } from 'comlink';
import { type Areas, type BridgeCover, deriveAreas } from '../core/derive/deriveAreas';
import type { Bridge, Project } from '../core/document/types';
import { roughOutline } from '../core/geom/offset/roughOutline';
import { startAlike } from '../core/geom/startAlike';
import type { Path } from '../core/geom/types';
import { ok, type Result } from '../core/result';
import { type PackedPath, packPath, unpackPath } from './packedPath';

/** How far the outline may be simplified while the bridge is dragged, mm: a tenth of a pixel as the whole bridge is seen. */
const STRAY_ON_THE_MOVE = 0.02;

/** What is asked about a bridge, its outline packed. */
export interface AreasQuestion {
  readonly bridge: Pick<Bridge, 'rim' | 'density' | 'thickness'>;
  readonly limits: Project['limits'];
  readonly cover: Result<Omit<BridgeCover, 'footprint'> & { readonly outline: PackedPath }>;
  readonly rebate: number;
  readonly moving: boolean;
}

/** The areas, the line of the finish packed. */
export type AreasAnswer = Result<Omit<Areas, 'finishLine'> & { readonly finishLine: readonly PackedPath[] }>;

const covered = ({ cover, moving }: AreasQuestion): Result<BridgeCover> => {
  if (!cover.ok) return cover;
  const outline: Path = unpackPath(cover.value.outline);
  return ok({ ...cover.value, footprint: { outline: moving ? roughOutline(outline, STRAY_ON_THE_MOVE) : outline } });
};

/** The lines of the finish as they were answered last: while a bridge is dragged, their dashes must not crawl. */
let last: readonly Path[] = [];

const areasWorker = {
  deriveAreas: async (question: AreasQuestion): Promise<AreasAnswer> => {
    const { bridge, limits, rebate } = question;
    const areas = await deriveAreas(bridge, limits, covered(question), rebate);
    if (!areas.ok) return areas;
    const lines = areas.value.finishLine.map((line, index) => {
      const before = question.moving ? last[index] : undefined;
      return before === undefined ? line : startAlike(line, before);
    });
    last = lines;
    return ok({ ...areas.value, finishLine: lines.map(packPath) });
  },
};

/** What the worker offers to the page. */
export type AreasWorker = typeof areasWorker;

expose(areasWorker);
