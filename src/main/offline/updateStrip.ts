import './updateStrip.css';

/** What the strip offers. */
export interface UpdateOffer {
  readonly words: string;
  readonly button: string;
  /** What must be done first, in a sentence; null when nothing must. */
  whatFirst(): string | null;
  /** Told whenever `whatFirst` may answer otherwise; answers with how to stop. */
  watch(changed: () => void): () => void;
  take(): void;
}

const child = <Name extends keyof HTMLElementTagNameMap>(
  parent: HTMLElement,
  name: Name,
  text = '',
): HTMLElementTagNameMap[Name] => {
  const element = document.createElement(name);
  element.textContent = text;
  parent.append(element);
  return element;
};

let closeLast = (): void => {};

/**
 * Shows a strip under the app that offers a new version, in place of the one before. Its button does nothing while
 * something must be done first, and says what.
 */
export const showUpdateStrip = (offer: UpdateOffer): void => {
  closeLast();
  const strip = document.createElement('aside');
  strip.className = 'update-strip';
  strip.setAttribute('aria-label', 'New version');
  const words = child(strip, 'p');
  words.setAttribute('aria-live', 'polite');
  const take = child(strip, 'button', offer.button);
  const later = child(strip, 'button', 'Later');
  take.type = 'button';
  later.type = 'button';
  take.className = 'primary';
  document.body.append(strip);

  const tell = (): void => {
    const first = offer.whatFirst();
    const text = first === null ? offer.words : `${offer.words} ${first}`;
    take.setAttribute('aria-disabled', String(first !== null));
    if (words.textContent !== text) words.textContent = text;
  };
  const stop = offer.watch(tell);
  closeLast = () => {
    stop();
    strip.remove();
  };
  take.addEventListener('click', () => {
    if (offer.whatFirst() === null) offer.take();
  });
  later.addEventListener('click', closeLast);
  // Readers announce what changes within an element that they already know.
  requestAnimationFrame(tell);
};
