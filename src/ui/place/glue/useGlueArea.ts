import { useStore } from '../../useStore';

/** The area that is glued, mm², and why it is not known; both null until it is. */
export const useGlueArea = (): { readonly area: number | null; readonly reason: string | null } => {
  const areas = useStore((state) => state.areas);
  if (areas === null) return { area: null, reason: null };
  return areas.ok
    ? { area: areas.value.glue, reason: null }
    : { area: null, reason: areas.issues.map(({ message }) => message).join(' ') };
};
