import { expect, test } from '@playwright/test';

test('the built app opens, says its name, reports no error and asks nothing of any other host', async ({ page }) => {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  const hosts = new Set<string>();
  page.on('request', (request) => hosts.add(new URL(request.url()).host));
  await page.goto('./');
  await expect(page.locator('canvas')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Saddlemark', exact: true })).toBeVisible();
  await expect(page).toHaveTitle(/Saddlemark/);
  expect([...hosts].filter((host) => host !== '' && host !== new URL(page.url()).host)).toEqual([]);
  expect(faults).toEqual([]);
});
