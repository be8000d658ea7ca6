import { type PaperCaution, paperCautions } from '../../../core/sheets/paperCautions';
import { paperOf, papersOf, readPrintSettings } from '../../../core/sheets/printSettings';
import type { Paper } from '../../../core/sheets/types';
import type { BenchState } from '../../../store/bench/createBench';
import { lengthStyle } from '../../../store/device';
import type { Device } from '../../../store/types';

/** What does not go with the paper that the pages are laid for, by all that this device and bench know of it. */
export const cautionsOf = (device: Device, { profiles, chosen, proof }: BenchState): readonly PaperCaution[] => {
  const settings = readPrintSettings(device.print);
  const { first, others } = papersOf(settings);
  const known = (id: string | null): Paper | null => [...first, ...others].find((paper) => paper.id === id) ?? null;
  const profile = profiles.find(({ id }) => id === chosen) ?? null;
  const on = known(profile?.paper ?? null);
  return paperCautions(
    {
      paper: paperOf(settings, device.paper),
      loaded: known(settings.loaded),
      profile: profile === null || on === null ? null : { of: profile, on },
      read: known(proof.paper),
    },
    lengthStyle(device),
  );
};

/** Why a download is held back until the maker has answered: what would come out of the printer is not what they count on. */
export const holdsBack = (device: Device, bench: BenchState): readonly PaperCaution[] =>
  cautionsOf(device, bench).filter(({ code }) => code !== 'paper.proof');
