import type { Page } from '@playwright/test';

/** Where the one chosen node is painted, in the page: a small solid spot in the colour of what is chosen; null when there is none. */
export const chosenNode = (page: Page): Promise<{ x: number; y: number } | null> =>
  page.evaluate(() => {
    const canvas = document.querySelector('canvas');
    const context = canvas?.getContext('2d');
    if (!canvas || !context) return null;
    const { data, width, height } = context.getImageData(0, 0, canvas.width, canvas.height);
    const box = canvas.getBoundingClientRect();
    const ratio = canvas.width / box.width;
    // #b3261e
    const red = (x: number, y: number): boolean => {
      const at = 4 * (y * width + x);
      return Math.abs((data[at] ?? 0) - 0xb3) < 3 && Math.abs((data[at + 1] ?? 0) - 0x26) < 3;
    };
    const half = Math.floor(3 * ratio);
    const solid = (x: number, y: number): boolean => {
      for (let down = -half; down <= half; down += 1)
        for (let across = -half; across <= half; across += 1) if (!red(x + across, y + down)) return false;
      return true;
    };
    const spot: { x: number; y: number }[] = [];
    for (let y = half; y < height - half; y += 1)
      for (let x = half; x < width - half; x += 1) if (red(x, y) && solid(x, y)) spot.push({ x, y });
    if (spot.length === 0) return null;
    const middle = (values: readonly number[]): number => (Math.min(...values) + Math.max(...values) + 1) / 2 / ratio;
    return { x: box.x + middle(spot.map(({ x }) => x)), y: box.y + middle(spot.map(({ y }) => y)) };
  });
