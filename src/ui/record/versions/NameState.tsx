import { useId, useState } from 'react';
import { useServices } from '../../services';
import { useStore } from '../../useStore';
import { keepNow } from './keepNow';

/** Keeps the present state by a name, for good. named: called once it is kept. */
export function NameState({ named }: { readonly named: () => Promise<void> }) {
  const { library, autosave, store } = useServices();
  const id = useStore((state) => state.project.id);
  const [name, setName] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const box = useId();
  const keep = async (): Promise<void> => {
    const wanted = name.trim();
    if (wanted === '') return setProblem('Type a name for the present state first, such as “as glued”.');
    await keepNow(await autosave());
    const shelf = await library();
    const there = await shelf.entry(id);
    // What was never changed was never kept: a name is reason enough.
    if (!there.ok && there.issues.some(({ code }) => code === 'library.missing'))
      await shelf.save(store.getState().project, null);
    const kept = await shelf.nameVersion(id, wanted);
    if (!kept.ok) return setProblem(kept.issues.map(({ message }) => message).join(' '));
    setProblem(null);
    setName('');
    store.actions.say(`Kept as it is now: ${wanted}`);
    await named();
  };
  return (
    <form
      className="name-state"
      onSubmit={(event) => {
        event.preventDefault();
        keep().catch((error: unknown) => setProblem(String(error)));
      }}
    >
      <label htmlFor={box}>Name of the present state</label>
      <span className="box">
        <input
          id={box}
          type="text"
          autoComplete="off"
          maxLength={80}
          placeholder="such as: as glued"
          value={name}
          aria-invalid={problem !== null}
          aria-describedby={problem === null ? undefined : `${box}-wrong`}
          onChange={({ target }) => setName(target.value)}
        />
      </span>
      <button type="submit">Keep it</button>
      {problem !== null && (
        <p id={`${box}-wrong`} className="field-wrong">
          {problem}
        </p>
      )}
    </form>
  );
}
