/** What one step of `npm test` gave: checks passed and failed, what failed by name, and what only its second attempt passed. */
const nothing = { passed: 0, failed: 0, failures: [], seconds: [] };

/** A step that either passes or fails as a whole counts one. */
export function tallyOfExit(code) {
  return code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/**
 * Counts from the test runner's own JSON. A file that could not be run holds no counted test and yet failed: it counts one.
 * So does a test that was skipped or left to do, and a run that ended badly for a reason no test shows.
 */
export function tallyOfRun(report, code) {
  if (report === null) return { passed: 0, failed: 1 };
  const failedFiles = report.testResults.filter(
    (file) => file.status === "failed" && !file.assertionResults.some((test) => test.status === "failed"),
  ).length;
  const failed = report.numFailedTests + report.numPendingTests + report.numTodoTests + failedFiles;
  const unexplained = code !== 0 && failed === 0 ? 1 : 0;
  return { passed: report.numPassedTests, failed: failed + unexplained };
}

/** The sum of several. */
export function sum(tallies) {
  return tallies.reduce(
    (total, { passed, failed, failures = [], seconds = [] }) => ({
      passed: total.passed + passed,
      failed: total.failed + failed,
      failures: [...total.failures, ...failures],
      seconds: [...total.seconds, ...seconds],
    }),
    nothing,
  );
}

/** The last line of `npm test`: `214 passed, 0 failed`. */
export function lastLine(tally) {
  return `${tally.passed} passed, ${tally.failed} failed`;
}

/**
 * What failed, by file, name and the first line of what was said: it stands at the end of a long run, where it is read.
 *
 * @example failuresOf(report) // ["tests/api/sealing.test.ts > a seal once: expected 409 to be 201"]
 */
export function failuresOf(report, title) {
  if (report === null) return [`${title}: the test runner left no readable result`];
  return report.testResults.flatMap((file) => {
    const failed = file.assertionResults.filter((one) => one.status === "failed");
    if (file.status === "failed" && failed.length === 0) return [`${file.name}: ${firstLine(file.message)}`];
    return failed.map((one) => named(file, one));
  });
}

/**
 * What passed, but not at once, with what the first attempt said. Only tests in a browser have a second attempt; a race in one is
 * still a fault to look for, so a run names it at its end.
 */
export function secondAttemptsOf(report) {
  return (report?.testResults ?? []).flatMap((file) =>
    file.assertionResults
      .filter((one) => one.status === "passed" && one.failureMessages.length > 0)
      .map((one) => named(file, one)),
  );
}

function named(file, one) {
  return `${file.name} > ${one.fullName}: ${firstLine(one.failureMessages[0])}`;
}

function firstLine(message = "") {
  return message.trim().split("\n")[0].slice(0, 300);
}
