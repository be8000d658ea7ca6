import { describe, expect, it } from 'vitest';
import { countPlaywright, countVitest } from './countReports.mjs';

// The shape of both reports: as vitest 4.1 and Playwright 1.65 write them, shortened.

const unitFile = (status: string, ...tests: string[]) => ({
  name: 'a.test.ts',
  status,
  assertionResults: tests.map((test, index) => ({ status: test, fullName: `test ${index}` })),
});

describe('countVitest', () => {
  it('counts passed and failed tests and names the failed ones', () => {
    const report = { testResults: [unitFile('failed', 'passed', 'failed'), unitFile('passed', 'passed')] };
    expect(countVitest(report, false)).toEqual({ passed: 2, failed: 1, faults: ['a.test.ts: test 1 (failed)'] });
  });

  it('counts a file that did not load as failed', () => {
    const report = { testResults: [unitFile('passed', 'passed'), unitFile('failed')] };
    expect(countVitest(report, false)).toEqual({ passed: 1, failed: 1, faults: ['a.test.ts: did not load'] });
  });

  it('counts a skipped test as failed', () => {
    expect(countVitest({ testResults: [unitFile('passed', 'passed', 'skipped')] }, true).failed).toBe(1);
  });

  it.each([undefined, {}, { testResults: [] }, { testResults: [unitFile('passed')] }])(
    'counts no test as failed: %o',
    (report) => {
      const { passed, failed } = countVitest(report, true);
      expect({ passed, failed }).toEqual({ passed: 0, failed: 1 });
    },
  );

  it('counts a runner that failed beside passed tests as failed', () => {
    expect(countVitest({ testResults: [unitFile('passed', 'passed')] }, false).failed).toBe(1);
  });
});

const journeys = (...statuses: string[]) => ({
  suites: [
    {
      specs: statuses.slice(0, 1).map((status) => ({ file: 'a.spec.ts', title: 'outer', tests: [{ status }] })),
      suites: [
        { specs: statuses.slice(1).map((status) => ({ file: 'a.spec.ts', title: 'inner', tests: [{ status }] })) },
      ],
    },
  ],
  errors: [] as { message: string }[],
});

describe('countPlaywright', () => {
  it('counts journeys in suites of any depth', () => {
    expect(countPlaywright(journeys('expected', 'expected', 'unexpected'), false)).toEqual({
      passed: 2,
      failed: 1,
      faults: ['a.spec.ts: inner (unexpected)'],
    });
  });

  it.each(['skipped', 'flaky'])('counts a %s journey as failed', (status) => {
    expect(countPlaywright(journeys('expected', status), true).failed).toBe(1);
  });

  it('counts an error outside of a journey, such as a file that did not load, as failed', () => {
    const report = { ...journeys('expected'), errors: [{ message: 'no such module' }] };
    expect(countPlaywright(report, false)).toEqual({ passed: 1, failed: 1, faults: ['no such module'] });
  });

  it.each([undefined, {}, { suites: [] }])('counts no journey as failed: %o', (report) => {
    const { passed, failed } = countPlaywright(report, true);
    expect({ passed, failed }).toEqual({ passed: 0, failed: 1 });
  });
});
