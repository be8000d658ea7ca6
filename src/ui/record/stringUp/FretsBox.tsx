import { TextBox } from '../../fields/TextBox';
import { parseFrets } from './parseFrets';

interface FretsBoxProps {
  readonly stringUp: string;
  readonly frets: readonly number[];
  /** Frets that hold readings and so stay. */
  readonly read: readonly number[];
  readonly take: (frets: readonly number[]) => void;
}

/** At which frets the strings are read. */
export function FretsBox({ stringUp, frets, read, take }: FretsBoxProps) {
  return (
    <TextBox
      label="Frets read"
      path={`stringUp.${stringUp}.frets`}
      shown={frets.join(', ')}
      unit=""
      about="The 12th is how most makers set a saddle; more frets spread what is left over them. Type them with commas: 5, 7, 12."
      decimal={false}
      take={(text) => {
        const found = parseFrets(text);
        if (!found.ok) return found.issues[0]?.message ?? null;
        const gone = read.filter((fret) => !found.value.includes(fret));
        if (gone.length > 0) return `There are readings at fret ${gone.join(', ')}: clear them first.`;
        take(found.value);
        return null;
      }}
    />
  );
}
