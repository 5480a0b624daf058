import { describe, expect, it } from "vitest";
import { finding, inspection, statement } from "../../testing/small-reports.ts";
import { findSharing } from "./index.ts";

const by = (more: { instrument?: string; person?: string }) =>
  finding("electrics.horn", { kind: "working", value: "yes" }, more);
const gauge = {
  instruments: [{ id: "gauge", name: "Paint gauge 7" }],
  persons: [{ id: "ann", name: "Ann Teller" }],
};
const [first, second] = [statement([], gauge), inspection([], gauge)];
const inHouse = inspection([], { ...gauge, author: first.author });

describe("findSharing", () => {
  it("shares nothing across firms by a name alone", () => {
    const sharing = findSharing(first, second, {});
    expect(sharing.instrument(by({ instrument: "gauge" }), by({ instrument: "gauge" }))).toBe(false);
    expect(sharing.person(by({ person: "ann" }), by({ person: "ann" }))).toBe(false);
  });

  it("shares inside one firm what has the same id and name", () => {
    const sharing = findSharing(first, inHouse, {});
    expect(sharing.instrument(by({ instrument: "gauge" }), by({ instrument: "gauge" }))).toBe(true);
    expect(sharing.person(by({ person: "ann" }), by({ person: "ann" }))).toBe(true);
    const renamed = { ...inHouse, instruments: [{ id: "gauge", name: "Paint gauge 8" }] };
    expect(
      findSharing(first, renamed, {}).instrument(by({ instrument: "gauge" }), by({ instrument: "gauge" })),
    ).toBe(false);
  });

  it("shares nothing between two firms of one role", () => {
    const other = inspection([], { ...gauge, author: { organization: "Second Look", role: "inspector" } });
    const sharing = findSharing(second, other, {});
    expect(sharing.instrument(by({ instrument: "gauge" }), by({ instrument: "gauge" }))).toBe(false);
  });

  it("takes a firm's two roles for two firms", () => {
    const other = { ...inHouse, author: { ...first.author, role: "carrier" as const } };
    expect(findSharing(first, other, {}).person(by({ person: "ann" }), by({ person: "ann" }))).toBe(false);
  });

  it("shares what the caller says", () => {
    const sharing = findSharing(first, second, {
      sameInstruments: [
        ["gauge", "g7"],
        ["gauge", "g8"],
      ],
      samePersons: [["ann", "a"]],
    });
    expect(sharing.instrument(by({ instrument: "gauge" }), by({ instrument: "g7" }))).toBe(true);
    expect(sharing.instrument(by({ instrument: "gauge" }), by({ instrument: "g8" }))).toBe(true);
    expect(sharing.instrument(by({ instrument: "g7" }), by({ instrument: "gauge" }))).toBe(false);
    expect(sharing.person(by({ person: "ann" }), by({ person: "a" }))).toBe(true);
  });

  it("takes one person's eye for an instrument where neither side names one", () => {
    const sharing = findSharing(first, second, { samePersons: [["ann", "ann"]] });
    expect(sharing.instrument(by({ person: "ann" }), by({ person: "ann" }))).toBe(true);
    expect(sharing.instrument(by({ person: "ann", instrument: "gauge" }), by({ person: "ann" }))).toBe(false);
    expect(sharing.instrument(by({ person: "ann" }), by({ person: "ann", instrument: "gauge" }))).toBe(false);
    expect(sharing.instrument(by({}), by({}))).toBe(false);
  });
});
