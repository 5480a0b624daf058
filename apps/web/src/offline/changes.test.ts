import "fake-indexeddb/auto";
import type { Finding } from "@evenhand/shared/finding";
import type { ReportDraft } from "@evenhand/shared/http/reports";
import { beforeEach, describe, expect, test } from "vitest";
import { changeFinding, keepDraft, settleConflict } from "./changes.ts";
import { store, type KeptDraft, type KeptFinding } from "./store.ts";

const report = "018f0000-0000-7000-8000-000000000003";
const other = "018f0000-0000-7000-8000-000000000004";
const place = "electrics.lamps@left-stop";
const lamp = (value: "yes" | "no", position = "left-stop"): Finding => ({
  item: "electrics.lamps",
  position,
  answer: { kind: "working", value },
  firmness: "asserted",
  basis: "seen",
});
const type = (value: "yes" | "no", position = "left-stop") =>
  changeFinding(report, `electrics.lamps@${position}`, { finding: lamp(value, position) });
const row = (at = place) => store.findings.get([report, at]);
const held = (more: Partial<KeptFinding> = {}): KeptFinding => ({
  report,
  place,
  finding: lamp("yes"),
  base: 3,
  state: "saved",
  ...more,
});
const draftOf = (findings: readonly Finding[]): ReportDraft =>
  JSON.parse(
    JSON.stringify({
      id: report,
      revision: 7,
      report: { findings, vehicle: { make: "Alderbrook" } },
      findings: findings.map(({ item, position }) => ({ item, position, revision: 5 })),
    }),
  );

beforeEach(async () => {
  await Promise.all([store.findings, store.operations, store.drafts].map((table) => table.clear()));
});

describe("a conflict that is settled with mine", () => {
  test("waits to be sent, and nothing is settled that is in none", async () => {
    await store.findings.put(held({ state: "conflict", theirs: lamp("no") }));
    await settleConflict({ report, place }, "mine");
    expect(await row()).toMatchObject({ state: "waiting", base: 3, finding: lamp("yes") });
    await store.findings.put(held());
    await settleConflict({ report, place }, "theirs");
    expect(await row()).toEqual(held());
    await settleConflict({ report, place: "electrics.horn@" }, "theirs");
    expect(await row("electrics.horn@")).toBeUndefined();
  });
});

describe("a draft that the service gives", () => {
  test("is taken as it is, but for what has not arrived", async () => {
    await type("no", "left-stop");
    const gone = held({ place: "electrics.lamps@plate", finding: lamp("yes", "plate") });
    const elsewhere = { ...gone, report: other };
    await store.findings.bulkPut([gone, elsewhere]);
    await keepDraft(draftOf([lamp("yes", "left-stop"), lamp("yes", "right-stop")]));
    expect(await row("electrics.lamps@left-stop")).toMatchObject({ state: "waiting", finding: lamp("no") });
    expect(await row("electrics.lamps@right-stop")).toEqual({
      report,
      place: "electrics.lamps@right-stop",
      finding: lamp("yes", "right-stop"),
      base: 5,
      state: "saved",
    });
    expect(await row("electrics.lamps@plate")).toBeUndefined();
    expect(await store.findings.get([other, elsewhere.place])).toEqual(elsewhere);
  });

  test("leaves what waits and is not in it", async () => {
    await type("no");
    await store.findings.put(held({ place: "electrics.horn@", state: "conflict" }));
    await keepDraft(draftOf([]));
    expect((await store.findings.toArray()).map(({ state }) => state).toSorted()).toEqual([
      "conflict",
      "waiting",
    ]);
  });

  test("ends what could not be read any more, and not what was refused as it was typed", async () => {
    const unreadable = held({ state: "refused", finding: null });
    await store.findings.put(unreadable);
    await keepDraft(draftOf([lamp("yes")]));
    expect(await row()).toMatchObject({ state: "saved", finding: lamp("yes") });
    await store.findings.put(held({ state: "refused", finding: lamp("no") }));
    await keepDraft(draftOf([lamp("yes")]));
    expect(await row()).toMatchObject({ state: "refused", finding: lamp("no") });
  });

  test("says why what it holds cannot be read", async () => {
    const raw: Finding = JSON.parse(JSON.stringify({ ...lamp("yes"), answer: { kind: "sounds" } }));
    await keepDraft(draftOf([raw]));
    expect((await row())?.problems?.map(({ reason }) => reason)).toEqual([
      "What is stored here cannot be read any more. Answer it anew.",
    ]);
  });

  test("of the revision that is known is taken again, and kept without its findings", async () => {
    await keepDraft(draftOf([lamp("yes")]));
    await keepDraft(draftOf([lamp("no")]));
    expect(await row()).toMatchObject({ finding: lamp("no") });
    const kept: KeptDraft["draft"] | undefined = (await store.drafts.get(report))?.draft;
    expect(kept).toMatchObject({ id: report, revision: 7, report: { vehicle: { make: "Alderbrook" } } });
    expect(kept).not.toHaveProperty("findings");
  });
});
