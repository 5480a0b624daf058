import { readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../root.mjs";

/** The scenario as committed; the service checks it when it loads it. */
export function readScenario() {
  return JSON.parse(readFileSync(join(root, "fixtures", "demo", "scenario.json"), "utf8"));
}

/** Who can sign in: name, firm, what they are, address and password, as lines of a table. */
export function accountLines({ accounts, organizations }) {
  const firms = new Map(organizations.map((organization) => [organization.key, organization]));
  const rows = accounts.map(({ name, email, password, memberships: [first] }) => {
    const firm = firms.get(first?.organization);
    return [firm?.kind ?? "", name, firm?.name === name ? "" : (firm?.name ?? ""), email, password];
  });
  const order = ["buyer", "inspector", "dealer", "operator"];
  const sorted = [...rows].sort(([a], [b]) => order.indexOf(a) - order.indexOf(b));
  const widths = [0, 1, 2, 3].map((column) => Math.max(...rows.map((row) => row[column].length)));
  return sorted.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join("  ")
      .trimEnd(),
  );
}
