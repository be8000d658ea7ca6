import type { HeightChain, HeightReason } from '../../core/height/types';

type Show = (mm: number) => string;

const percent = (share: number): string => `${Math.round(share * 100)} %`;
const degrees = (angle: number): string => `${angle.toFixed(1)}°`;

/** A straightedge against the top of the bridge: + above it. */
const over = (mm: number, show: Show): string =>
  mm < 0 ? `${show(-mm)} below the top of the bridge` : `${show(mm)} over the bridge`;

/** The answer in one sentence. present: thickness of the bridge at hand, mm. */
export const heightVerdictWords = ({ verdict, thickness }: HeightChain, present: number, show: Show): string => {
  if (verdict === 'go') return 'Go: this bridge works at this neck angle.';
  if (verdict === 'set-neck-first' || thickness === null)
    return 'Set the neck first: no bridge within the limits would do at this neck angle.';
  const { least, most } = thickness;
  if (present >= least && present <= most)
    return 'Change the bridge: its thickness would do, but its slot is too deep for it.';
  return `Change the bridge: one ${show(least)} to ${show(most)} thick at the slot would do.`;
};

/** One reason in words, with its figures. */
export const heightReasonWords = ({ code, value, limit }: HeightReason, show: Show): string => {
  switch (code) {
    case 'airspace-low':
      return `The straightedge lies ${over(value, show)}; the least is ${over(limit, show)}. The neck points too low for it.`;
    case 'airspace-high':
      return `The straightedge lies ${over(value, show)}; the most is ${over(limit, show)}. The bridge is too low for this neck.`;
    case 'proud-low':
      return `The saddle would stand only ${show(value)} over the bridge; ${show(limit)} at least is wanted.`;
    case 'proud-high':
      return `The saddle would stand ${show(value)} over the bridge; ${show(limit)} at most is wanted.`;
    case 'thickness-low':
      return `The bridge is ${show(value)} thick; ${show(limit)} is the least that is usual.`;
    case 'thickness-high':
      return `The bridge is ${show(value)} thick; ${show(limit)} is the most that is usual.`;
    case 'wood-thin':
      return `${show(value)} of wood is left under the slot; ${show(limit)} at least is wanted.`;
    case 'share-low':
      return `Only ${percent(value)} of the highest saddle stands in the slot, ${percent(limit)} is wanted, and the slot cannot go deeper.`;
    case 'slot-deeper':
      return `Cut the slot from ${show(value)} to ${show(limit)} deep, so that it holds the saddle well.`;
    case 'break-low':
      return `The strings bend ${degrees(value)} over the saddle; ${degrees(limit)} is usual. Ramps behind it add to that.`;
    case 'blank-short':
      return `The saddle blank is ${show(value)} high; ${show(limit)} is needed.`;
  }
};
