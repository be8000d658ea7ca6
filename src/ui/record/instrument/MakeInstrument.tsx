import { useId, useState } from 'react';
import { beginInstrument } from '../../../store/commands/record/beginInstrument';
import { useServices } from '../../services';
import { useStore } from '../../useStore';
import { useLibraryWork } from '../shelf/useLibraryWork';

/** The panel of the new work comes in place of this one: the focus goes to its head. */
const goToThisWork = (): void => {
  requestAnimationFrame(() => {
    if (document.activeElement === document.body) document.getElementById('this-work')?.focus();
  });
};

/** From a model to one instrument: a copy with a number of its own, or this very design. */
export function MakeInstrument() {
  const { actions } = useServices().store;
  const work = useLibraryWork();
  const id = useStore((state) => state.project.id);
  const [serial, setSerial] = useState('');
  const box = useId();
  return (
    <div className="make-instrument">
      <p className="hint">
        A model is the design that instruments are made from. What is read, done and learned belongs to one instrument.
      </p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void work.makeInstrument(id, serial).then(goToThisWork);
        }}
      >
        <div className="field field-wide">
          <label htmlFor={box}>Number or name of a new instrument</label>
          <span className="box">
            <input
              id={box}
              type="text"
              autoComplete="off"
              spellCheck={false}
              maxLength={80}
              placeholder="such as No. 12"
              value={serial}
              onChange={({ target }) => setSerial(target.value)}
            />
          </span>
        </div>
        <div className="buttons">
          <button type="submit" className="primary">
            Make an instrument of this model
          </button>
        </div>
      </form>
      <button
        type="button"
        className="plain-button"
        onClick={() => actions.change('One instrument, not a model', beginInstrument)}
      >
        Not a model: this is the one instrument
      </button>
    </div>
  );
}
