// @ts-check
/** Says which tests passed only when they were tried again: a browser that was late once should not hide, nor fail everything. */
export default class SecondTry {
  /** @type {string[]} */
  #names = [];

  /** @param {import('vitest/node').TestCase} test */
  onTestCaseResult(test) {
    if (test.diagnostic()?.flaky) this.#names.push(`${test.project.name}: ${test.fullName}`);
  }

  onTestRunEnd() {
    if (this.#names.length > 0)
      console.log(`\npassed at the second try only:\n${this.#names.map((name) => `  ${name}`).join('\n')}`);
  }
}
