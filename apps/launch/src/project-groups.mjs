/** Kinds of test that start no server run together first. */
const pure = ["unit", "published", "architecture"];
/** Kinds of which each keeps some cores busy and waits in between, for the database or a page: one run each, side by side. */
const busy = ["api", "browser"];
/** Kinds that try one thing after the other and mostly wait: one run each, side by side at the end, where least else goes on. */
const patient = ["demo", "hostile", "faults"];

/**
 * The order in which kinds of test run: steps one after the other, each a list of runs that go side by side, each run
 * a list of kinds.
 *
 * @example stepsOf(["api", "unit", "published", "browser"]) // [[["unit", "published"]], [["api"], ["browser"]]]
 */
export function stepsOf(names) {
  const among = (kinds) => names.filter((name) => kinds.includes(name));
  const sideBySide = (kinds) => among(kinds).map((name) => [name]);
  const known = [...pure, ...busy, ...patient];
  const others = names.filter((name) => !known.includes(name)).map((name) => [[name]]);
  const steps = [[among(pure)], ...others, sideBySide(busy), sideBySide(patient)];
  return steps.map((runs) => runs.filter((run) => run.length > 0)).filter((runs) => runs.length > 0);
}
