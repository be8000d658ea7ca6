import { useEffect, useId, useRef, useState } from 'react';
import type { WoodUsed } from '../../../core/document/buildTypes';
import { MOST_WOODS } from '../../../core/document/mostOfBuild';
import { addWood } from '../../../store/commands/record/addWood';
import { removeWood } from '../../../store/commands/record/removeWood';
import { useChange } from '../../draw/repair/useChange';
import { FieldRow } from '../../fields/FieldRow';
import { More } from '../../fields/More';

/** Parts of an instrument that its papers speak of, in the order of the work; any other can be typed. */
const PARTS = ['top', 'back and sides', 'neck', 'fingerboard', 'bridge', 'bridge plate', 'saddle'] as const;

/** The woods of this one instrument. */
export function WoodRows({ woods }: { readonly woods: readonly WoodUsed[] }) {
  const change = useChange();
  const select = useId();
  const left = PARTS.filter((part) => !woods.some((wood) => wood.part === part));
  const [chosen, setChosen] = useState<string>(left[0] ?? '');
  const part = left.some((each) => each === chosen) ? chosen : (left[0] ?? '');
  const list = useRef<HTMLUListElement>(null);
  const added = useRef(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another wood is the one thing to react to
  useEffect(() => {
    if (!added.current) return;
    added.current = false;
    const boxes = list.current?.querySelectorAll<HTMLInputElement>('input[data-path$=".species"]');
    boxes?.item(boxes.length - 1)?.focus();
  }, [woods.length]);
  return (
    <section className="woods" aria-labelledby={`${select}-woods`}>
      <h3 id={`${select}-woods`}>Woods</h3>
      <ul ref={list}>
        {woods.map(({ id, part: of }, index) => (
          <li key={id}>
            <FieldRow path={`build.woods.${index}.part`} />
            <FieldRow path={`build.woods.${index}.species`} />
            <FieldRow path={`build.woods.${index}.origin`} />
            <button
              type="button"
              aria-label={`Take wood ${index + 1} away: ${of === '' ? 'no part' : of}`}
              onClick={() => change(`Wood taken away: ${of}`, (project) => removeWood(project, id))}
            >
              Take away
            </button>
          </li>
        ))}
      </ul>
      {woods.length < MOST_WOODS && (
        <div className="add-wood">
          <label htmlFor={select}>Add the wood of</label>
          <select id={select} value={part} onChange={({ target }) => setChosen(target.value)}>
            {left.map((each) => (
              <option key={each}>{each}</option>
            ))}
            <option value="">another part</option>
          </select>
          <button
            type="button"
            onClick={() => {
              added.current = true;
              change(`Wood added: ${part === '' ? 'another part' : part}`, (project) => addWood(project, part));
            }}
          >
            Add
          </button>
        </div>
      )}
      <More summary="Why species and origin">
        <div className="card">
          <p>
            Trade in some woods is restricted, and who sells, sends or carries an instrument over a border may be asked
            what it is made of and where that grew. Easy to write down with the bill at hand, hard to prove years later.
          </p>
          <p>
            Finished rosewood instruments have broadly been exempt from permits since 2019, Dalbergia nigra not; blanks
            are no instruments. Rules change and differ by country: check current law before you buy, sell or send.
          </p>
          <p className="quiet">Source: traveling-with-instruments.eu/dalbergia</p>
        </div>
      </More>
    </section>
  );
}
