import { useStore as useZustand } from 'zustand';
import type { AppState } from '../store/types';
import { useServices } from './services';

/** What `select` takes from the state, kept up to date. It must answer with the same value for the same state. */
export const useStore = <Selected>(select: (state: AppState) => Selected): Selected =>
  useZustand(useServices().shown, select);
