import type { Learned } from '../../core/document/types';
import { takeLearned } from '../../store/commands/stringUp/takeLearned';
import { signedFine } from '../draw/repair/fineLengths';
import { useServices } from '../services';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';

interface LearnedRowProps {
  readonly learned: Learned;
  /** Whether compensation is by the strings, where it counts. */
  readonly counts: boolean;
}

/** What earlier instruments add to what the strings want, with a way to take it out. */
export function LearnedRow({ learned, counts }: LearnedRowProps) {
  const { actions } = useServices().store;
  const { unit } = useLengths().style;
  const strings = useStore((state) => state.project.strings);
  const figures = strings.flatMap(({ id, name }, index) => {
    const figure = learned.byString[id];
    return figure === undefined ? [] : [`${index + 1}\u00a0${name}\u00a0${signedFine(figure, unit)}`];
  });
  return (
    <tr className="learned-row">
      <th scope="row" colSpan={6}>
        Learned from {learned.builds} {learned.builds === 1 ? 'instrument' : 'instruments'},{' '}
        {counts ? 'in “wanted”' : 'set aside: it counts where compensation is by the strings'}: {figures.join(', ')}{' '}
        <button
          type="button"
          onClick={() => actions.change('What was learned taken out', (project) => takeLearned(project, null))}
        >
          Take out
        </button>
      </th>
    </tr>
  );
}
