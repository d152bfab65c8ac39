// @ts-check
/** Counts the runner's JSON report. */

/**
 * @typedef {{ status: string, fullName: string, failureMessages?: string[] }} Assertion
 * @typedef {{ testResults: { name: string, status: string, message?: string, assertionResults: Assertion[] }[] }} Report
 */

const firstLine = (/** @type {string | undefined} */ message) => (message ?? '').trim().split('\n')[0] ?? '';

/**
 * Passed, skipped and, in words, failed. A file that could not run, a folder of which no test ran, and an error that belongs to no
 * test are failures too.
 * @param {Report} report the runner's report
 * @param {number} code the runner's exit code
 * @param {string[]} wanted names of the folders that have test files
 * @param {(file: string) => string} folderOf the folder that a test file belongs to
 */
export function count(report, code, wanted, folderOf) {
  let passed = 0;
  let skipped = 0;
  /** @type {string[]} */
  const failures = [];
  const ran = new Set();
  for (const { name, status, message, assertionResults } of report.testResults) {
    const folder = folderOf(name);
    for (const test of assertionResults) {
      ran.add(folder);
      if (test.status === 'passed') passed += 1;
      else if (test.status === 'failed') failures.push(`${folder}: ${test.fullName}: ${firstLine(test.failureMessages?.[0])}`);
      else skipped += 1;
    }
    if (status === 'failed' && !assertionResults.some((test) => test.status === 'failed')) {
      failures.push(`${name} did not run: ${firstLine(message)}`);
    }
  }
  for (const folder of wanted) if (!ran.has(folder)) failures.push(`${folder}: has test files, but no test ran`);
  if (code !== 0 && failures.length === 0) failures.push(`the test runner ended with code ${code} though no test failed`);
  return { passed, skipped, failures };
}
