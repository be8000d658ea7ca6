import { counted } from '../counted';

interface Imported {
  readonly added: number;
  readonly copies: number;
  readonly same: number;
}

/** What came of a library file: "2 were added; 1 is here with other content and came as a copy". */
export const importedWords = ({ added, copies, same }: Imported): string =>
  [
    added === 0 ? 'nothing new' : `${counted(added, 'was', 'were')} added`,
    copies === 0
      ? ''
      : `${counted(copies, 'is', 'are')} here with other content and came as ${copies === 1 ? 'a copy' : 'copies'}`,
    same === 0 ? '' : `${counted(same, 'was', 'were')} here already, just the same`,
  ]
    .filter((each) => each !== '')
    .join('; ');
