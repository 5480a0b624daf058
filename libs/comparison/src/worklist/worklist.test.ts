import { describe, expect, it } from "vitest";
import type { Finding } from "@evenhand/shared/finding";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compare } from "../compare/index.ts";
import { worklist } from "./index.ts";

const tools = { instruments: [{ id: "gauge", name: "gauge" }] };
const list = (a: Finding[], b: Finding[]) => {
  const [first, second] = [statement(a, tools), inspection(b, tools)];
  const { entries } = compare(first, second, sheet);
  return worklist(entries, first, second, sheet).map(({ entry, ...row }) => ({
    item: entries[entry]?.item,
    ...row,
  }));
};
const read = (
  item: string,
  unit: "psi" | "V",
  instrument: string | undefined,
  position: string,
  ...values: number[]
): Finding =>
  finding(
    item,
    { kind: "reading", unit, values: values.map((value) => ({ value })) },
    { instrument, position },
  );
const psi = (...values: number[]) => read("engine.compression", "psi", "gauge", "cylinder-1", ...values);
const psiByEye = (...values: number[]) =>
  read("engine.compression", "psi", undefined, "cylinder-1", ...values);
const minutesOf = (item: string) => sheet.items.get(item)?.item.minutes;
const grade = (value: string) => finding("interior.headliner", { kind: "grade", scale: "house", value });
const horn = (value: "yes" | "intermittent") => finding("electrics.horn", { kind: "working", value });
const volts = (value: number) => read("electrics.volts-rest", "V", "gauge", "", value);
const casting = (text: string) => finding("identity.engine-number", { kind: "code", text });
const grille = (value: string) =>
  finding("brightwork.grille", { kind: "grade", scale: "percent", value: Number(value) });

describe("worklist", () => {
  it("asks for so many readings where they would settle it", () => {
    expect(list([psi(150)], [psi(140)])).toEqual([
      {
        item: "engine.compression",
        work: "read-again",
        readings: expect.any(Number),
        minutes: minutesOf("engine.compression"),
      },
    ]);
  });

  it("asks for an instrument where it was read by eye", () => {
    const works = [148, 145, 142, 140, 138].flatMap((value) => list([psi(150, 150)], [psiByEye(value)]));
    expect(works.map(({ work }) => work)).toContain("use-instrument");
  });

  it("asks for a finer instrument where the ordinary one would not do", () => {
    expect(list([psiByEye(150)], [psi(130)])).toMatchObject([{ work: "finer-instrument", readings: null }]);
  });

  it("asks for one day where it drifts", () => {
    expect(list([volts(12.9)], [volts(12.65)])).toMatchObject([{ work: "read-on-one-day", readings: null }]);
  });

  it("asks for a look, an extent or a code where nothing is a matter of readings", () => {
    expect(list([grade("as-new")], [grade("light-wear")])).toMatchObject([{ work: "look-again" }]);
    expect(list([casting("5S123")], [casting("55123")])).toMatchObject([{ work: "read-code-again" }]);
  });

  it("puts what can hurt first, doubtful before consistent", () => {
    const rows = list(
      [grade("as-new"), horn("yes"), psi(150)],
      [grade("light-wear"), horn("intermittent"), psi(140)],
    );
    expect(rows.map(({ item }) => item)).toEqual([
      "electrics.horn",
      "engine.compression",
      "interior.headliner",
    ]);
  });

  it("puts what could hurt somebody before what is in doubt and hurts nobody", () => {
    const tread = finding(
      "wheels.tread-depth",
      { kind: "reading", unit: "1/32in", values: [{ value: 8 }] },
      { position: "left-front" },
    );
    const rows = list([grade("as-new"), horn("yes"), tread], [horn("intermittent"), tread]);
    expect(rows.map(({ item }) => item)).toEqual(["wheels.tread-depth", "electrics.horn"]);
  });

  it("puts what is doubtful before what is consistent, of what hurts nobody", () => {
    const scales = [
      {
        id: "percent",
        name: "Per cent",
        step: 5,
        grades: [
          { id: "low", name: "low" },
          { id: "high", name: "high" },
        ],
      },
    ];
    const [a, b] = [
      statement([psi(150), grille("95")], { ...tools, scales }),
      inspection([psi(140), grille("60")], { ...tools, scales }),
    ];
    const { entries } = compare(a, b, sheet);
    const rows = worklist(entries, a, b, sheet).map(({ entry }) => [
      entries[entry]?.item,
      entries[entry]?.outcome,
    ]);
    expect(rows).toEqual([
      ["brightwork.grille", "doubtful"],
      ["engine.compression", "consistent"],
    ]);
  });

  it("leaves out what is settled, unseen, or seen and sound and not stated", () => {
    expect(list([horn("yes")], [horn("yes"), grade("as-new")])).toEqual([]);
  });
});
