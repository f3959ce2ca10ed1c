import { readFileSync } from 'node:fs';

/** @typedef {{ passed: number, failed: number, skipped: number }} Counts */

/**
 * Counts a run from vitest's JSON report. A file that could not even be loaded holds no tests, and counts as one failure.
 * @param {string} reportPath
 * @returns {Counts | undefined} nothing where there is no report, because the run died before its end
 */
export function readCounts(reportPath) {
  let report;
  try {
    report = JSON.parse(readFileSync(reportPath, 'utf8'));
  } catch {
    return undefined;
  }
  const counts = { passed: 0, failed: 0, skipped: 0 };
  for (const file of report.testResults) {
    let failedHere = 0;
    for (const { status } of file.assertionResults) {
      if (status === 'passed') counts.passed += 1;
      else if (status === 'failed') failedHere += 1;
      else counts.skipped += 1;
    }
    counts.failed += failedHere === 0 && file.status === 'failed' ? 1 : failedHere;
  }
  return counts;
}

/** @param {Counts} counts */
export function tellCounts({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}
