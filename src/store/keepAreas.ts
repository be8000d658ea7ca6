import type { BridgePlace } from '../core/bridge/types';
import type { Areas, deriveAreas } from '../core/derive/deriveAreas';
import { remember } from '../core/derive/remember';
import type { Derived } from '../core/derive/types';
import type { Bridge, Project } from '../core/document/types';
import type { Result } from '../core/result';

/** deriveAreas itself, or what loads it first. It never rejects. */
export type DeriveAreas = typeof deriveAreas;

interface Asked {
  answer: Result<Areas> | null;
}

/**
 * A function that answers with the areas of a bridge once they are known, and null until then. They are asked for once;
 * `arrived` is called when they come, unless the bridge has become another one in the meantime.
 */
export const keepAreas = (
  derive: DeriveAreas,
  arrived: () => void,
): ((project: Project, derived: Derived) => Result<Areas> | null) => {
  let latest: Asked | null = null;
  const ask = remember((bridge: Bridge, limits: Project['limits'], place: Result<BridgePlace>) => {
    const asked: Asked = { answer: null };
    derive(bridge, limits, place).then((answer) => {
      asked.answer = answer;
      if (asked === latest) arrived();
    });
    return asked;
  });
  return (project, derived) => {
    latest = ask(project.bridge, project.limits, derived.bridge);
    return latest.answer;
  };
};
