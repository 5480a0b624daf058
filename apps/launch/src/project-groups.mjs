/** Kinds of test that start no server run together first; then each of the others alone, so that two never start servers at once. */
const pure = ["unit", "published", "architecture"];

/**
 * The order in which kinds of test run.
 *
 * @example groupsOf(["api", "unit", "published", "browser"]) // [["unit", "published"], ["api"], ["browser"]]
 */
export function groupsOf(names) {
  const together = pure.filter((name) => names.includes(name));
  const alone = names.filter((name) => !pure.includes(name)).map((name) => [name]);
  return together.length > 0 ? [together, ...alone] : alone;
}
