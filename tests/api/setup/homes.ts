import assert from "node:assert/strict";
import type { CaseHome, CaseRow } from "@evenhand/shared/http/cases";
import type { Person } from "./person.ts";

export const home = (person: Person, query: Record<string, string> = {}): Promise<CaseHome> =>
  person.does("cases.list", { query });

/** The person's case of the car, in whichever part of their home it stands. */
export async function caseOn(person: Person, car: string): Promise<CaseRow | undefined> {
  const { yours, others, rest } = await home(person);
  return [...yours, ...others, ...rest].find((row) => row.car.id === car);
}

/** In which part of the home the case of the car stands, at which stage, and what comes next: one line. */
export async function standingOn(person: Person, car: string): Promise<string> {
  const parts = await home(person);
  // What somebody owes is found among what is open, and not by chance among the newest of the rest.
  assert.ok(parts.open >= parts.yours.length + parts.others.length, "an open case is taken for one at rest");
  for (const part of ["yours", "others", "rest"] as const) {
    const row = parts[part].find((each) => each.car.id === car);
    if (row === undefined) continue;
    const { stage, next } = row.standing;
    return `${part}: ${stage}${next === null ? "" : `, ${next.step} of the ${next.of}`}`;
  }
  return "none";
}
