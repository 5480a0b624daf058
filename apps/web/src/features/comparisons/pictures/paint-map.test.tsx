/// <reference types="vite/client" />
import type { Comparison } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { IntlProvider } from "react-intl";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, test } from "vitest";
import { en } from "../../../strings/en.ts";
import type { Row } from "../../../entities/comparison/model.ts";
import { PaintMap } from "./PaintMap.tsx";

const itemOf = (id: string) => sheetVersion1.items.find((item) => item.id === id);

const finding = (item: string, position: string, unit: "um" | "mil", ...values: number[]): Finding => ({
  item,
  position,
  answer: { kind: "reading", unit, values: values.map((value) => ({ value })) },
  firmness: "asserted",
  basis: "measured",
});
const row = (item: string, position: string, b: Finding | null, a: Finding | null = null): Row => {
  const entry: Comparison["entries"][number] = JSON.parse(JSON.stringify({ item, position }));
  return {
    at: 0,
    entry,
    item: itemOf(item),
    section: undefined,
    name: item,
    place: position,
    station: undefined,
    a,
    b,
    rank: null,
    broken: [],
    words: "",
  };
};

/** The numbers drawn on a panel: as stated, then as found. */
const drawn = (rows: readonly Row[], panel: string): readonly string[][] => {
  const page = renderToStaticMarkup(
    <IntlProvider locale="en-US" messages={en}>
      <PaintMap rows={rows} />
    </IntlProvider>,
  );
  return page
    .split("<svg")
    .slice(1)
    .map((map) => {
      const [, from = ""] = map.split(`data-panel="${panel}"`);
      const [group = ""] = from.split("data-panel=");
      return [...group.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text = ""]) => text);
    });
};

const hood = [
  row(
    "body.paint-thickness",
    "hood",
    finding("body.paint-thickness", "hood", "um", 120, 130, 200),
    finding("body.paint-thickness", "hood", "mil", 4, 5, 6),
  ),
  row("body.paint-highest", "hood", finding("body.paint-highest", "hood", "um", 600, 610, 608)),
];

test("the mean is of the spots alone, and the thickest place stands beside it, not in its stead", () => {
  expect(drawn(hood, "hood")[1]).toEqual(["150", "↑610"]);
  expect(drawn(hood.toReversed(), "hood")[1]).toEqual(["150", "↑610"]);
});

test("mils are drawn in micrometers", () => {
  expect(drawn(hood, "hood")[0]).toEqual(["127", "↑152"]);
});

test("a panel with only its thickest place read has no mean", () => {
  expect(drawn(hood.slice(1), "hood")).toEqual([[], ["↑610"]]);
});

test("a panel nobody read carries no number", () => {
  expect(drawn([row("body.paint-thickness", "roof", null)], "roof")).toEqual([[], []]);
});
