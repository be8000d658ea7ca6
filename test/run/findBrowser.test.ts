import { describe, expect, it } from 'vitest';
import { findBrowser, locateBrowser, systemBrowsers } from './findBrowser.mjs';

// The order stands in the project's plan: named, Playwright's own, the system's, an install, one sentence.
// Paths of installed browsers: common practice of the packages named, from memory.

const own = '/home/maker/playwright/chrome';

/** A machine on which the listed files are browsers that start; an install adds a file, or fails when it names none. */
const machine = (given: {
  browsers?: string[];
  env?: Record<string, string>;
  platform?: string;
  isRoot?: boolean;
  apt?: boolean;
  playwrightInstalls?: string;
  debianInstalls?: string;
}) => {
  const browsers = new Set(given.browsers ?? []);
  const tried: string[] = [];
  return {
    tried,
    platform: given.platform ?? 'linux',
    env: given.env ?? { PATH: '/usr/bin:/bin' },
    isRoot: given.isRoot ?? false,
    works: (file: string) => browsers.has(file),
    playwrightPath: () => own,
    installPlaywright: () => {
      tried.push('playwright');
      if (given.playwrightInstalls) browsers.add(given.playwrightInstalls);
    },
    hasApt: () => given.apt ?? false,
    installDebian: () => {
      tried.push('debian');
      if (given.debianInstalls) browsers.add(given.debianInstalls);
    },
    say: () => {},
  };
};

describe('findBrowser', () => {
  it('takes the browser that the environment names before every other', () => {
    const probes = machine({
      browsers: ['/opt/mine/chrome', own, '/usr/bin/chromium'],
      env: { SADDLEMARK_BROWSER: '/opt/mine/chrome', PATH: '/usr/bin' },
    });
    expect(findBrowser(probes)).toBe('/opt/mine/chrome');
  });

  it('says so when the environment names a browser that does not start, and takes no other', () => {
    const probes = machine({ browsers: [own], env: { SADDLEMARK_BROWSER: '/opt/gone/chrome' } });
    expect(() => findBrowser(probes)).toThrow('/opt/gone/chrome');
    expect(probes.tried).toEqual([]);
  });

  it("takes Playwright's own before the system's", () => {
    expect(findBrowser(machine({ browsers: ['/usr/bin/chromium', own] }))).toBe(own);
  });

  it("takes the system's when Playwright has none, and installs nothing", () => {
    const probes = machine({ browsers: ['/usr/bin/google-chrome', '/usr/bin/chromium'], isRoot: true, apt: true });
    expect(findBrowser(probes)).toBe('/usr/bin/chromium');
    expect(probes.tried).toEqual([]);
  });

  it('goes through the names of the system down to the last', () => {
    expect(findBrowser(machine({ browsers: ['/usr/bin/microsoft-edge'] }))).toBe('/usr/bin/microsoft-edge');
  });

  it("tries Playwright's install first", () => {
    const probes = machine({ playwrightInstalls: own, isRoot: true, apt: true, debianInstalls: '/usr/bin/chromium' });
    expect(findBrowser(probes)).toBe(own);
    expect(probes.tried).toEqual(['playwright']);
  });

  it("then Debian's, as root", () => {
    const probes = machine({ isRoot: true, apt: true, debianInstalls: '/usr/bin/chromium' });
    expect(findBrowser(probes)).toBe('/usr/bin/chromium');
    expect(probes.tried).toEqual(['playwright', 'debian']);
  });

  it.each([
    { isRoot: false, apt: true },
    { isRoot: true, apt: false },
  ])('does not try Debian without root and apt: %o', (given) => {
    const probes = machine({ ...given, debianInstalls: '/usr/bin/chromium' });
    expect(() => findBrowser(probes)).toThrow(/install Chromium, Chrome or Edge, or set SADDLEMARK_BROWSER/);
    expect(probes.tried).toEqual(['playwright']);
  });

  it('ends in one sentence when every install failed', () => {
    const probes = machine({ isRoot: true, apt: true });
    expect(() => findBrowser(probes)).toThrow(/^No browser was found [^.]*\.$/);
    expect(probes.tried).toEqual(['playwright', 'debian']);
  });
});

describe('locateBrowser', () => {
  it('installs nothing and answers undefined where there is none', () => {
    const probes = machine({ playwrightInstalls: own, isRoot: true, apt: true });
    expect(locateBrowser(probes)).toBeUndefined();
    expect(probes.tried).toEqual([]);
  });
});

describe('systemBrowsers', () => {
  it('lists the applications of macOS, for all users and for one', () => {
    const found = systemBrowsers({ platform: 'darwin', env: { HOME: '/Users/maker' } });
    expect(found).toContain('/Applications/Google Chrome.app/Contents/MacOS/Google Chrome');
    expect(found).toContain('/Users/maker/Applications/Chromium.app/Contents/MacOS/Chromium');
  });

  it('lists the program folders of Windows', () => {
    const env = { ProgramFiles: 'C:\\Program Files', 'ProgramFiles(x86)': 'C:\\Program Files (x86)' };
    const found = systemBrowsers({ platform: 'win32', env });
    expect(found).toContain('C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe');
    expect(found).toContain('C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe');
  });

  it('looks through the search path of Linux and the usual folders', () => {
    const found = systemBrowsers({ platform: 'linux', env: { PATH: '/opt/browsers:bin' } });
    expect(found[0]).toBe('/opt/browsers/chromium');
    expect(found).toContain('/usr/bin/google-chrome-stable');
    expect(found).toContain('/snap/bin/chromium');
  });
});
