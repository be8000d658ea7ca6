import { createContext, useContext } from 'react';
import type { Project } from '../core/document/types';
import type { Autosave, Clock, DrawingSurface, Files, Library, NewId, Workshop } from '../core/ports';
import type { Result } from '../core/result';
import type { calmStore } from '../store/calmStore';
import type { Store } from '../store/createStore';
import type { DeviceMemory } from '../store/types';

/** What the screen is handed at the start; heavy parts come when first asked for. */
export interface Services {
  readonly store: Store;
  /** The store's state as the screen shows it. */
  readonly shown: ReturnType<typeof calmStore>;
  readonly clock: Clock;
  readonly newId: NewId;
  readonly files: Files;
  /** Projects to and from the text of a file. */
  readonly codec: () => Promise<{ encode(project: Project): string; decode(text: string): Result<Project> }>;
  readonly surface: DrawingSurface<HTMLElement>;
  readonly workshop: () => Promise<Workshop>;
  /** Every project of this browser. */
  readonly library: () => Promise<Library>;
  /** Keeps the project in hand. */
  readonly autosave: () => Promise<Autosave>;
  /** Keeps what belongs to this maker's bench and not to a project. */
  readonly benchMemory: DeviceMemory;
  /** Keeps clocks that run, of all projects. */
  readonly timerMemory: DeviceMemory;
}

export const ServicesContext = createContext<Services | null>(null);

/** The services that the screen was started with. */
export const useServices = (): Services => {
  const services = useContext(ServicesContext);
  if (services === null) throw new Error('The screen was started without its services.');
  return services;
};
