import { expect, test } from "vitest";
import {
  declaredAfter,
  declaredBody,
  nothingDeclared,
  type Declared,
  type DeclaredStep,
} from "./declared.ts";

const zone = "America/Denver";
const after = (...steps: readonly DeclaredStep[]): Declared => steps.reduce(declaredAfter, nothingDeclared);

test("what is added is declared, midnights on the site's clock", () => {
  const added = after({ step: "add-interest", zone }, { step: "add-dealing", vehicle: "car-1" });
  const [interest] = added.interests;
  const [dealing] = added.dealings;
  if (interest === undefined || dealing === undefined) throw new Error("There is one of each.");
  const changed = [
    {
      step: "change-interest",
      interest: { ...interest, kind: "owns", since: "2026-01-15", note: "a tenth" },
    },
    { step: "change-dealing", dealing: { ...dealing, dealing: "sold", note: "in 2019" } },
  ] as const satisfies readonly DeclaredStep[];
  expect(declaredBody(changed.reduce<Declared>(declaredAfter, added), zone)).toEqual({
    independent: true,
    interests: [
      { kind: "owns", holder: "inspector", since: "2026-01-15T07:00:00Z", endedAt: null, note: "a tenth" },
    ],
    dealings: [{ vehicle: "car-1", dealing: "sold", note: "in 2019" }],
  });
});

test("a row is changed and taken out by its own key, also after another was", () => {
  const two = after({ step: "add-interest", zone }, { step: "add-interest", zone });
  const one = declaredAfter(two, { step: "remove-interest", key: 2 });
  const again = declaredAfter(one, { step: "add-dealing", vehicle: "car-1" });
  expect(again.interests.map(({ key }) => key)).toEqual([1]);
  expect(again.dealings.map(({ key }) => key)).toEqual([3]);
  expect(declaredAfter(again, { step: "remove-dealing", key: 3 }).dealings).toEqual([]);
});

test("nobody is independent before saying so, and may take it back", () => {
  expect(nothingDeclared.independent).toBe(false);
  const said = after({ step: "independent", independent: true });
  expect(said.independent).toBe(true);
  expect(declaredAfter(said, { step: "independent", independent: false }).independent).toBe(false);
});
