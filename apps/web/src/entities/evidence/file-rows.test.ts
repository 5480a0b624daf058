import type { EvidenceOwned } from "@evenhand/shared/http/evidence";
import { expect, test } from "vitest";
import type { KeptUpload } from "../../offline/store.ts";
import { fileRows, fileWord, isOnItsWay, placeOf, rowKey } from "./file-rows.ts";

const report = "018f0000-0000-7000-8000-000000000001";
const file = new Blob(["tread"]);
const kept = (id: string, more: Partial<KeptUpload> = {}): KeptUpload => ({
  id,
  report,
  item: "electrics.horn",
  position: "",
  name: "horn.jpg",
  file,
  ...more,
});
const owned = (id: string, more: Partial<EvidenceOwned> = {}): EvidenceOwned => ({
  id,
  item: "wheels.tread-depth",
  position: "left-rear",
  caption: null,
  kind: "jpeg",
  sha256: "0".repeat(64),
  bytes: 5,
  width: 40,
  height: 30,
  placeholder: null,
  copies: [],
  marks: [],
  questions: [],
  name: "tread.jpg",
  received: 5,
  state: "ready",
  refused: null,
  capture: null,
  quality: null,
  sealedIn: null,
  removedAt: null,
  ...more,
});

test("a file that is sent from here is listed once, with how far it has come", () => {
  const rows = fileRows({
    kept: [kept("a", { address: "https://cars.example/api/v1/uploads/one" }), kept("b")],
    sending: { id: "a", sent: 3 },
    owned: [owned("one", { state: "arriving" }), owned("two")],
  });
  expect(rows.map(rowKey)).toEqual(["two", "a", "b"]);
  expect(rows.map(fileWord)).toEqual(["ready", "sending", "waiting"]);
  expect(rows.map(placeOf)).toMatchObject([{ position: "left-rear" }, { position: "" }, { position: "" }]);
  expect(rows[1]).toMatchObject({ sent: 3 });
});

const refusal = { type: "evidence-full", title: "", status: 409, detail: "" };
test.each([
  ["waiting", { at: "device", kept: kept("a"), sent: undefined }, true],
  ["sending", { at: "device", kept: kept("a"), sent: 0 }, true],
  ["not-taken", { at: "device", kept: kept("a", { refusal }), sent: undefined }, false],
  ["elsewhere", { at: "service", file: owned("a", { state: "arriving" }) }, true],
  ["looked-at", { at: "service", file: owned("a", { state: "pending" }) }, true],
  ["looked-at", { at: "service", file: owned("a", { state: "checked" }) }, true],
  ["ready", { at: "service", file: owned("a") }, false],
  ["not-taken", { at: "service", file: owned("a", { state: "refused" }) }, false],
  ["taken-away", { at: "service", file: owned("a", { removedAt: "2026-05-04T15:00:00.000Z" }) }, false],
  [
    "dropped-part",
    { at: "service", file: owned("a", { state: "arriving", removedAt: "2026-05-04T15:00:00.000Z" }) },
    false,
  ],
] as const)("%s", (word, row, onItsWay) => {
  expect(fileWord(row)).toBe(word);
  expect(isOnItsWay(row)).toBe(onItsWay);
});
