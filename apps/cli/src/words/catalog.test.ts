import { describe, expect, it } from "vitest";
import { catalog } from "./catalog.ts";

describe("the line on how far both sides scatter", () => {
  it("is silent where every reading stands as well by how far they really do", () => {
    expect(catalog.scatter({ readings: 30, asDeclared: 0.01, onlyAsDeclared: 0 })).toBeUndefined();
  });

  it("says that they scatter more where that is the likelier", () => {
    expect(catalog.scatter({ readings: 30, asDeclared: 0.2, onlyAsDeclared: 12 })).toBe(
      "By what was found better than stated, the two sides scatter more than they declared: 12 readings agree or differ only if both sides measured as exactly as they declared.",
    );
  });

  it("accuses nobody where it is not", () => {
    expect(catalog.scatter({ readings: 30, asDeclared: 0.7, onlyAsDeclared: 1 })).toBe(
      "1 reading agrees or differs only if both sides measured as exactly as they declared; what was found better than stated does not speak against it.",
    );
  });
});
