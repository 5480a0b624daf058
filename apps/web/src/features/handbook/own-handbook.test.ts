import type { FirmHandbook } from "@evenhand/shared/cross-check";
import { expect, it } from "vitest";
import { carsOf, differences, handbookOf, placeOf, typedHandbook, wrongCount } from "./own-handbook";

const uthwick = { make: "Uthwick", model: "Larksong", fromYear: 1977, source: "manual", data: { timing: 6 } };
const pell = { make: "Pell", source: "register", data: { axleRatios: [3.5] } };
const stored: FirmHandbook = { limits: { "gap.taper": 2 }, makers: [uthwick, pell] };

it("types and reads back a firm's handbook; entries taken out are gone", () => {
  const typed = typedHandbook({ revision: 3, handbook: stored });
  expect(handbookOf(typed)).toEqual(stored);
  expect(wrongCount(typed)).toBe(0);
  const [first] = typed.makers;
  const less = { ...typed, makers: typed.makers.map((entry) => ({ ...entry, removed: entry === first })) };
  expect(handbookOf(less).makers).toEqual([pell]);
});

it("counts every place that is wrong", () => {
  const typed = typedHandbook({ revision: 0, handbook: stored });
  const makers = typed.makers.map((entry) => ({ ...entry, text: { ...entry.text, source: "" } }));
  expect(wrongCount({ limits: { ...typed.limits, "gap.taper": "wide" }, makers })).toBe(3);
});

it("names the cars of an entry", () => {
  expect(carsOf(uthwick)).toBe("Uthwick Larksong 1977–");
  expect(carsOf({ ...uthwick, toYear: 1981 })).toBe("Uthwick Larksong 1977–1981");
  expect(carsOf({ ...pell, fromYear: 1970, toYear: 1970 })).toBe("Pell 1970");
  expect(carsOf({ ...pell, toYear: 1970 })).toBe("Pell –1970");
  expect(carsOf(pell)).toBe("Pell");
});

it("says where two handbooks part", () => {
  const theirs: FirmHandbook = {
    limits: { "gap.taper": 2, "paint.thin": 80 },
    makers: [
      { source: "manual", make: "Uthwick", model: "Larksong", fromYear: 1977, data: { timing: 8 } },
      { ...pell, make: "Orrin" },
    ],
  };
  expect(differences(stored, stored)).toEqual([]);
  expect(differences(stored, theirs)).toEqual([
    { what: "limit", id: "paint.thin", mine: undefined, theirs: 80 },
    { what: "maker", name: "Uthwick Larksong 1977–" },
    { what: "only-mine", name: "Pell" },
    { what: "only-theirs", name: "Orrin" },
  ]);
});

it("names the place of a problem the service found", () => {
  expect(placeOf("/limits/gap.taper", stored)).toBe("taper of a gap, or left against right");
  expect(placeOf("/limits/gone", stored)).toBe("gone");
  expect(placeOf("/makers/1/toYear", stored)).toBe("Pell");
  expect(placeOf("/makers/9", stored)).toBeUndefined();
  expect(placeOf("header/if-match", stored)).toBeUndefined();
});
