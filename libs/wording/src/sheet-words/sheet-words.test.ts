import { expect, it } from "vitest";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { sheetWords, spelled } from "./index.ts";

const words = sheetWords(sheetVersion1);

it.each([
  ["wheels.tread-depth", "left-front", "tread depth, left front"],
  ["wheels.tread-depth", "spare", "tread depth, spare"],
  ["engine.compression", "cylinder-4", "compression, cylinder 4"],
  ["identity.casting-number", "left-head", "casting number, left cylinder head"],
  ["identity.odometer-on-papers", "entry-2", "odometer entries on papers, second entry"],
  ["body.magnet", "left-front-fender", "magnet holds, left front fender, lower"],
  ["electrics.horn", "", "horn"],
  ["steering.free-play", "", "steering free play"],
  ["wheels.tread-depth", "", "tread depth"],
  ["wheels.tread-depth", "roof-rack", "tread depth, roof rack"],
  ["engine.compression", "pot-4", "compression, pot 4"],
  ["electrics.horn", "under-hood", "horn, under hood"],
  ["elsewhere.fog-horn", "left-front", "fog horn, left front"],
  ["foghorn", "", "foghorn"],
])("%s at %s: %s", (item, position, said) => {
  expect(words.place(item, position)).toBe(said);
});

it("a spot is called by the item's own name for it, else by the drawing's, else by its id", () => {
  const at = (item: string, spot: string) => words.spot(words.findItem(item), spot);
  expect([at("wheels.tread-depth", "inner"), at("wheels.tread-depth", "outer")]).toEqual([
    "inner groove",
    "outer groove",
  ]);
  expect(at("body.faults", "upper-front")).toBe("upper front");
  expect(at("wheels.tire-faults", "inner-sidewall")).toBe("inner sidewall");
  expect(at("electrics.horn", "bell-mouth")).toBe("bell mouth");
  expect(words.spot(undefined, "bell-mouth")).toBe("bell mouth");
});

it("an option is called as its item calls it", () => {
  const option = (item: string, id: string) => words.option(words.findItem(item), id);
  expect(option("identity.title-holder", "seller-in-hand")).toBe("in the seller's name, in hand");
  expect(option("electrics.horn", "seller-in-hand")).toBe("seller in hand");
  expect(words.option(undefined, "seller-in-hand")).toBe("seller in hand");
});

it("the sheet's own words come before what an id says, and are looked up once", () => {
  expect(words.item("electrics.volts-rest")).toBe("battery volts at rest");
  expect(words.findItem("electrics.volts-rest")?.id).toBe("electrics.volts-rest");
  expect(words.findItem("electrics.no-such-thing")).toBeUndefined();
  expect(spelled("doors.hinge-play")).toBe("hinge play");
  expect(sheetWords(sheetVersion1)).toBe(words);
});

it("counted places are called by the words of what is counted", () => {
  const positionSets = sheetVersion1.positionSets.map((set) =>
    set.numbered === undefined ? set : { ...set, numbered: { ...set.numbered, words: "pot no." } },
  );
  const own = sheetWords({ ...sheetVersion1, positionSets });
  const item = own.findItem("engine.compression");
  expect(["cylinder-4", "cylinder-12", "head-4"].map((position) => own.position(item, position))).toEqual([
    "pot no. 4",
    "pot no. 12",
    "head 4",
  ]);
});

it("a cell of a drawing is called as the drawing calls it", () => {
  const drawings = sheetVersion1.drawings.map((drawing) => ({
    ...drawing,
    cells: drawing.cells.map((cell) => ({ ...cell, words: { ...cell.words, american: `cell ${cell.id}` } })),
  }));
  const own = sheetWords({ ...sheetVersion1, drawings });
  const panel = own.findItem("body.faults");
  expect([own.spot(panel, "upper-front"), own.spot(panel, "lower-rear")]).toEqual([
    "cell upper-front",
    "cell lower-rear",
  ]);
  expect(own.spot(own.findItem("electrics.horn"), "upper-front")).toBe("upper front");
});
