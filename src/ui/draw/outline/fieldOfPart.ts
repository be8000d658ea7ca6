/** The first field that says where a part lies or how large it is; null for a part that follows from others. */
export const fieldOfPart = (part: string): string | null => {
  if (part === 'footprint') return 'bridge.outline.shape';
  if (part === 'slot') return 'bridge.slot.fromFront';
  if (part.startsWith('pin ')) return 'bridge.pins.spread';
  if (part.startsWith('locating pin')) return 'bridge.locating.site';
  return part === 'line of the finish' ? 'bridge.rim' : null;
};
