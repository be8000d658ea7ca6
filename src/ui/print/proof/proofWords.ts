import type { PrintProof } from '../../../core/sheets/proof/provePrint';

interface VerdictWords {
  readonly name: string;
  readonly words: string;
  readonly look: '' | ' verdict-look' | ' verdict-wrong';
}

/** What each verdict asks of the maker. */
export const VERDICTS: Readonly<Record<PrintProof['verdict'], VerdictWords>> = {
  true: { name: 'True', words: 'within 0.25 mm at this bridge: use it.', look: '' },
  correct: {
    name: 'Correct',
    words: 'the printer or the paper is off by a little: keep the factors and print again with them.',
    look: ' verdict-look',
  },
  reprint: { name: 'Reprint', words: 'something is set wrong: do not use this sheet.', look: ' verdict-wrong' },
  refuse: {
    name: 'Refuse',
    words: 'outside 90 to 110 %: this is not the sheet that was drawn.',
    look: ' verdict-wrong',
  },
};

/** What to do about readings that do not tell for sure; null when they do. */
export const doubtWords = ({ sure, wouldTell }: PrintProof): string | null => {
  if (sure) return null;
  const names = wouldTell.map(({ name }) => name).join(', ');
  return names === ''
    ? 'Not sure: too near a limit to tell by any rule. Treat it as the worse of the two.'
    : `Not sure: these readings are too coarse to tell. Fine enough: ${names}.`;
};
