import type { Page } from '@playwright/test';

/** The middle of what is painted in the colour of a chosen part, in the page; null when nothing is. */
export const painted = (page: Page): Promise<{ x: number; y: number } | null> =>
  page.evaluate(() => {
    const canvas = document.querySelector('canvas');
    const context = canvas?.getContext('2d');
    if (!canvas || !context) return null;
    const { data, width } = context.getImageData(0, 0, canvas.width, canvas.height);
    let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
    for (let index = 0; index < data.length; index += 4) {
      const [red = 0, green = 0, , alpha = 0] = data.subarray(index, index + 4);
      // #b3261e
      if (Math.abs(red - 0xb3) > 2 || Math.abs(green - 0x26) > 2 || alpha < 250) continue;
      const [x, y] = [(index / 4) % width, Math.floor(index / 4 / width)];
      [left, right, top, bottom] = [Math.min(left, x), Math.max(right, x), Math.min(top, y), Math.max(bottom, y)];
    }
    if (left > right) return null;
    const box = canvas.getBoundingClientRect();
    const ratio = canvas.width / box.width;
    return { x: box.x + (left + right) / 2 / ratio, y: box.y + (top + bottom) / 2 / ratio };
  });
