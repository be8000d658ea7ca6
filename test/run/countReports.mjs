import { readFileSync } from 'node:fs';

/** @typedef {{ passed: number, failed: number, faults: string[] }} Count `faults` names what failed, for people */

/**
 * @param {string} file
 * @returns {any} undefined where the file is missing or is no JSON
 */
export const readReport = (file) => {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
};

/**
 * A report with no test at all, or none where the runner itself failed, is one fault: silence never counts as passed.
 * @param {Count} count
 * @param {boolean} ranWell whether the runner ended with success
 * @returns {Count}
 */
const orFault = ({ passed, failed, faults }, ranWell) => {
  if (passed + failed === 0) return { passed, failed: 1, faults: ['there was no test to run'] };
  if (failed === 0 && !ranWell) return { passed, failed: 1, faults: ['the runner failed although every test passed'] };
  return { passed, failed, faults };
};

/** @type {Count} */
const noReport = { passed: 0, failed: 1, faults: ['the runner left no report'] };

/**
 * Counts vitest's JSON report. A skipped test and a file that fails to load count as failed.
 * @param {any} report
 * @param {boolean} ranWell
 * @returns {Count}
 */
export const countVitest = (report, ranWell) => {
  if (!Array.isArray(report?.testResults)) return noReport;
  let passed = 0;
  /** @type {string[]} */
  const faults = [];
  for (const file of report.testResults) {
    for (const test of file.assertionResults) {
      if (test.status === 'passed') passed += 1;
      else faults.push(`${file.name}: ${test.fullName} (${test.status})`);
    }
    const noneFailed = file.assertionResults.every((/** @type {any} */ test) => test.status === 'passed');
    if (file.status !== 'passed' && noneFailed) faults.push(`${file.name}: did not load`);
  }
  return orFault({ passed, failed: faults.length, faults }, ranWell);
};

/**
 * Counts Playwright's JSON report. Flaky and skipped journeys, and errors outside of any journey, count as failed.
 * @param {any} report
 * @param {boolean} ranWell
 * @returns {Count}
 */
export const countPlaywright = (report, ranWell) => {
  if (!Array.isArray(report?.suites)) return noReport;
  let passed = 0;
  /** @type {string[]} */
  const faults = (report.errors ?? []).map((/** @type {any} */ error) => error.message ?? 'an error outside of a test');
  /** @param {any} suite */
  const walk = (suite) => {
    for (const spec of suite.specs ?? []) {
      for (const test of spec.tests) {
        if (test.status === 'expected') passed += 1;
        else faults.push(`${spec.file}: ${spec.title} (${test.status})`);
      }
    }
    for (const inner of suite.suites ?? []) walk(inner);
  };
  for (const suite of report.suites) walk(suite);
  return orFault({ passed, failed: faults.length, faults }, ranWell);
};
