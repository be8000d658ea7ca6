import { useSyncExternalStore } from 'react';
import { useServices } from '../../services';
import { type Shelf, type ShelfState, shelfOf } from './createShelf';

/** The library as this screen holds it, and its state. */
export const useShelf = (): { readonly shelf: Shelf; readonly state: ShelfState } => {
  const shelf = shelfOf(useServices());
  return { shelf, state: useSyncExternalStore(shelf.subscribe, shelf.getState) };
};
