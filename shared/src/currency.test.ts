import { expect, test } from "vitest";
import { Currency } from "./currency.ts";

const known = Intl.supportedValuesOf("currency");
const taken = known.filter((code) => Currency.safeParse(code).success);

test("every code taken is one the Unicode CLDR knows, and none is one that went out of use or is no money", () => {
  expect(taken.length).toBeGreaterThan(150);
  for (const code of ["USD", "EUR", "GBP", "JPY", "CAD", "MXN", "CHF"]) expect(taken).toContain(code);
  for (const code of ["DEM", "FRF", "ITL", "XXX", "XTS", "QQQ", "usd", ""])
    expect([code, Currency.safeParse(code).success]).toEqual([code, false]);
});
