import { useMemo } from 'react';
import { checkMessage } from '../../../core/checks/checkMessage';
import type { DesignCheck } from '../../../core/checks/types';
import { mendDesign } from '../../../store/commands/mendDesign';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';

/** Puts right what a check found, in one step; nothing where no figure would, or while something is being dragged. */
export function MendButton({ check }: { readonly check: DesignCheck }) {
  const { actions } = useServices().store;
  const { withUnit } = useLengths();
  const still = useStore((state) => state.preview === null);
  const mend = useMemo(() => (still ? (check.mend?.() ?? null) : null), [check, still]);
  if (mend === null) return null;
  const label = checkMessage({ message: mend.label, lengths: mend.lengths }, withUnit);
  return (
    <button type="button" onClick={() => actions.change(label, (project) => mendDesign(project, mend))}>
      Mend: {label}
    </button>
  );
}
