import type { Soundhole } from '../document/bodyTypes';

/**
 * Whether a caul as large as the plate goes through the soundhole end first: its section, `narrow` by `thick`, must lie
 * within the hole, (narrow/2a)² + (thick/2b)² ≤ 1 with the half axes a ≥ b of the oval and the wider side of the section
 * along the longer of them. mm; how deep the body is, and braces in the way, are not asked.
 */
export const caulPasses = ({ across, along }: Soundhole, narrow: number, thick: number): boolean => {
  const [long, short] = [Math.max(across, along ?? across), Math.min(across, along ?? across)];
  const [wide, flat] = [Math.max(narrow, thick), Math.min(narrow, thick)];
  return (wide / long) ** 2 + (flat / short) ** 2 <= 1;
};
