import { useStore } from '../../useStore';

/** The bridge from the side; null until that part is loaded. */
export const useSide = () => useStore((state) => state.around?.side ?? null);
