import { readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../root.mjs";

const kinds = ["buyer", "inspector", "dealer", "operator"];

/** What each organization of the scenario is, by its name. */
function kindsOfOrganizations() {
  const file = join(root, "fixtures", "demo", "scenario.json");
  return new Map(JSON.parse(readFileSync(file, "utf8")).organizations.map(({ name, kind }) => [name, kind]));
}

/** Who can sign in: what they are, name, firm, address and password, as lines of a table; buyers first. */
export function accountLines(accounts) {
  const kindOf = kindsOfOrganizations();
  const rows = accounts.map(({ name, email, password, organizations: [firm = ""] }) => {
    const kind = kindOf.get(firm) ?? "";
    return [kind, name, firm === name ? "" : firm, email, password];
  });
  const sorted = rows.toSorted(([a], [b]) => kinds.indexOf(a) - kinds.indexOf(b));
  const widths = [0, 1, 2, 3, 4].map((column) => Math.max(...rows.map((row) => row[column].length)));
  return sorted.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column]))
      .join("  ")
      .trimEnd(),
  );
}
