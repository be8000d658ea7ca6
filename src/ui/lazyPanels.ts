import { type ComponentType, createElement, type LazyExoticComponent, lazy } from 'react';

type Loaded = typeof import('./measure/panels');
type Panels = Omit<Loaded, 'AllFields'>;

const panels = (): Promise<Loaded> => import('./measure/panels');

const within =
  (AllFields: Loaded['AllFields'], Panel: ComponentType<object>): ComponentType<object> =>
  (props) =>
    createElement(AllFields, null, createElement(Panel, props));

/** A panel of Measure that is loaded, with all the others and every field, when the first of them is opened. */
export const lazyPanel = <Name extends keyof Panels>(name: Name): LazyExoticComponent<Panels[Name]> =>
  lazy(async () => {
    const loaded = await panels();
    const panel = within(loaded.AllFields, loaded[name] as ComponentType<object>);
    return { default: panel as unknown as Panels[Name] & ComponentType };
  });
