import type { Page } from '@playwright/test';

/** What the element that has the focus is called, and what it is. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const element = document.activeElement;
    if (!(element instanceof HTMLElement)) return '';
    const labels = 'labels' in element ? [...((element as HTMLInputElement).labels ?? [])] : [];
    return (element.getAttribute('aria-label') ?? labels[0]?.textContent ?? element.textContent ?? '').trim();
  });

/** Presses Tab (or Shift+Tab) until the focus stands on this name. */
export const tabTo = async (page: Page, name: string, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> => {
  for (let presses = 0; presses < 200; presses += 1) {
    await page.keyboard.press(key);
    if ((await focused(page)) === name) return;
  }
  throw new Error(`Tab never reached "${name}".`);
};

/** Goes to a box by Tab, types over what it holds and leaves the text by Enter. */
export const typeOver = async (page: Page, name: string, text: string): Promise<void> => {
  await tabTo(page, name);
  await page.keyboard.press('Control+A');
  if (text === '') await page.keyboard.press('Delete');
  else await page.keyboard.type(text);
  await page.keyboard.press('Enter');
};
