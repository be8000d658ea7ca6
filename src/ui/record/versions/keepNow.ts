import type { Autosave } from '../../../core/ports';

/** Longer than any state takes to be kept, ms. */
const PATIENCE = 4000;

/** Has what was changed last kept at once, and waits for it; goes on after a while whether it was or not. */
export const keepNow = async (keeper: Autosave): Promise<void> => {
  keeper.retry();
  if (keeper.state().kind !== 'keeping') return;
  await new Promise<void>((resolve) => {
    const finish = (): void => {
      clearTimeout(timer);
      stop();
      resolve();
    };
    const timer = setTimeout(finish, PATIENCE);
    const stop = keeper.subscribe(() => {
      if (keeper.state().kind !== 'keeping') finish();
    });
  });
};
