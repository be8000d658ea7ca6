/** A reason must hold this long, ms, before it is said: a hand that only passes by says nothing. */
const PAUSE = 350;

/** Says words once they have stayed the same for a while. */
export const announceWhenStill = (say: (text: string) => void): { hear(text: string): void; stop(): void } => {
  let heard = '';
  let timer: ReturnType<typeof setTimeout> | undefined;
  return {
    hear: (text) => {
      if (text === heard) return;
      heard = text;
      clearTimeout(timer);
      if (text !== '') timer = setTimeout(() => say(text), PAUSE);
    },
    stop: () => {
      heard = '';
      clearTimeout(timer);
    },
  };
};
