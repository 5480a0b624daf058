import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import {
  admitted,
  comparisonOf,
  line,
  namesOf,
  sheet,
  silent,
  unasked,
  unseen,
} from "../../testing/lines.ts";
import { matters } from "../matters/index.ts";

const findingBy = (basis: Finding["basis"]): Finding => ({
  item: "x.y",
  position: "",
  answer: { kind: "working", value: "no" },
  firmness: "asserted",
  basis,
});
/** What the inspector saw stands at 0, what he was told at 1. */
const inspection = { findings: [findingBy("seen"), findingBy("told")], scales: [] };
const of = (...entries: Entry[]) =>
  matters(comparisonOf(entries), { a: { findings: [], scales: [] }, b: inspection, sheet });
const names = (...entries: Entry[]) => namesOf(of(...entries));

const told = { finding: { a: 0, b: 1 } } as const;
const measured = (place: string, more: Partial<Entry> = {}) =>
  line(place, { marks: ["by-figures"], ...more });
const hose = "brakes.hoses@left-front";
const fixing = "wheels.fixings@left-front";

const sure = (...entries: Entry[]) => of(...entries)[0]?.certainty;
const isAdmitted = (...entries: Entry[]) => of(...entries)[0]?.admitted;

describe("how sure a matter is", () => {
  it("is as sure as the strongest of its gravest lines", () => {
    expect(sure(line(hose), measured("brakes.hoses@right-front"))).toBe("measured");
    expect(sure(line(hose, told), line("brakes.hoses@right-front"))).toBe("seen");
    expect(sure(line(hose, told), line("brakes.hoses@right-front", { outcome: "doubtful" }))).toBe("told");
    expect(sure(line(hose, { outcome: "doubtful" }))).toBe("doubtful");
    expect(sure(unseen(hose))).toBe("unknown");
    expect(sure(line(hose, { finding: { a: 0, b: null } }))).toBe("told");
  });

  it("is no surer for milder lines", () => {
    expect(sure(line(hose, told), measured("brakes.servo", { severity: "repair" }))).toBe("told");
    expect(sure(measured("brakes.servo", { severity: "repair" }), line(hose, told))).toBe("told");
  });
});

describe("of two matters as grave", () => {
  it("what was shown stands before what was told, and that before what is in doubt", () => {
    expect(names(line(hose, told), line(fixing))).toEqual(["wheels", "brakes"]);
    expect(names(line(hose, { outcome: "doubtful" }), line(fixing, told))).toEqual(["wheels", "brakes"]);
    expect(names(line(hose), measured(fixing))).toEqual(["brakes", "wheels"]);
    expect(names(line(hose), line(fixing))).toEqual(["brakes", "wheels"]);
  });

  it("the corner named first on the car stands first, whichever was found first", () => {
    const corners = ["right-rear", "left-front", "left-rear", "right-front"];
    expect(names(...corners.map((corner) => line(`underbody.rails@${corner}`)))).toEqual([
      "structure@left-front",
      "structure@right-front",
      "structure@left-rear",
      "structure@right-rear",
    ]);
    expect(
      names(line("underbody.rails@left-front"), line("underbody.rails@right-front"), unseen(hose)),
    ).toEqual(["structure@left-front", "structure@right-front", "unseen-lift"]);
  });
});

describe("what both say", () => {
  it("is admitted where nothing worse than a trifle, and nothing but gaps, stand beside it", () => {
    expect(isAdmitted(admitted(hose))).toBe(true);
    expect(isAdmitted(admitted(hose), unseen("brakes.hoses@right-front"))).toBe(true);
    expect(isAdmitted(admitted(hose), line("brakes.servo", { severity: "repair" }))).toBe(false);
    expect(isAdmitted(line(hose))).toBe(false);
    expect(isAdmitted(unseen(hose))).toBe(false);
    expect(isAdmitted(line("electrics.clock", { severity: "small" }))).toBe(false);
  });
});

describe("what nobody spoke of", () => {
  it("stands before the trifles once it is made one, however grave", () => {
    const dangers = [
      hose,
      fixing,
      "steering.free-play",
      "steering.springs@left-front",
      "wheels.tread-depth@left-front",
      "engine.fuel-smell",
      "driveline.exhaust@hangers",
      "driveline.joint-play",
      "brightwork.glass-faults@windshield",
    ];
    const repairs = ["electrics.clock", "electrics.heat"].map((place) => line(place, { severity: "repair" }));
    const silence = unasked("identity.theft", { severity: "halt" });
    const found = namesOf(
      matters(
        comparisonOf([
          silence,
          unasked("underbody.rails@left-front"),
          ...dangers.map((place) => line(place)),
          ...repairs,
          line("interior.carpet", { severity: "small" }),
        ]),
        silent,
      ),
    );
    expect(found.slice(-3)).toEqual(["repairs", "unseen", "small-things"]);
  });
});
