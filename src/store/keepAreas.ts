import type { BridgePlace } from '../core/bridge/types';
import type { Areas } from '../core/derive/deriveAreas';
import { remember } from '../core/derive/remember';
import type { Derived } from '../core/derive/types';
import type { Bridge, Project } from '../core/document/types';
import type { Result } from '../core/result';

/**
 * deriveAreas, or what loads it first. It never rejects. moving: another bridge is asked about in each frame, so that the
 * line of the finish may come as rough as a screen can show.
 */
export type DeriveAreas = (
  bridge: Pick<Bridge, 'rim' | 'density' | 'thickness'>,
  limits: Project['limits'],
  place: Result<BridgePlace>,
  rebate: number,
  moving: boolean,
) => Promise<Result<Areas>>;

interface Asked {
  answer: Result<Areas> | null;
  readonly order: number;
}

/**
 * A function that answers with the areas of a bridge once they are known, and null until then. They are asked for once;
 * `arrived` is called when they come, unless the bridge has become another one in the meantime. While a bridge is
 * `moving`, each frame another, it answers with the newest areas that came, which lie a frame or two behind.
 */
export const keepAreas = (
  derive: DeriveAreas,
  arrived: () => void,
): ((project: Project, derived: Derived, moving: boolean) => Result<Areas> | null) => {
  let latest: Asked | null = null;
  let newest: Asked | null = null;
  let count = 0;
  let onTheMove = false;
  const ask = remember((...bridge: Parameters<DeriveAreas>) => {
    count += 1;
    const asked: Asked = { answer: null, order: count };
    derive(...bridge).then((answer) => {
      asked.answer = answer;
      if (newest === null || newest.order < asked.order) newest = asked;
      if (asked === latest || (onTheMove && asked === newest)) arrived();
    });
    return asked;
  });
  return (project, derived, moving) => {
    onTheMove = moving;
    latest = ask(project.bridge, project.limits, derived.bridge, project.build?.rebate?.width ?? 0, moving);
    return latest.answer ?? (moving && newest !== null ? newest.answer : null);
  };
};
