import { type ComponentType, type LazyExoticComponent, lazy } from 'react';

type Panels = typeof import('./measure/panels');

const panels = (): Promise<Panels> => import('./measure/panels');

/** A panel of Measure that is loaded, with all the others, when the first of them is opened. */
export const lazyPanel = <Name extends keyof Panels>(name: Name): LazyExoticComponent<Panels[Name]> =>
  lazy(async () => ({ default: (await panels())[name] as Panels[Name] & ComponentType }));
