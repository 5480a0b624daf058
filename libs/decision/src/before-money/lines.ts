import type { BeforeMoneyLine } from "@evenhand/shared/before-money";

export type Line = {
  readonly line: BeforeMoneyLine;
  /** Items of the sheet that speak of it. */
  readonly items: readonly string[];
  /** Somebody always receives the money: such a line cannot be left out as not due. */
  readonly always?: true;
  /** Only there where the record gives reason. */
  readonly onlyWithMatters?: true;
};

/** What is gone through before money moves; common practice, no source. */
export const LINES: readonly Line[] = [
  {
    line: "title",
    items: [
      "identity.title-holder",
      "identity.title-number",
      "identity.title-kind",
      "identity.registration",
      "identity.owners",
    ],
  },
  { line: "brand", items: ["identity.title-brand", "identity.buy-back"] },
  { line: "lien", items: ["identity.lien", "identity.lien-release-date"] },
  {
    line: "numbers",
    items: [
      "identity.vin",
      "identity.plate-fixing",
      "identity.market-label",
      "identity.engine-number",
      "identity.partial-vin",
      "identity.stamping-surface",
      "identity.pad",
      "identity.invoice",
    ],
  },
  { line: "border", items: ["identity.import-papers"] },
  { line: "payee", items: [], always: true },
  { line: "law", items: [] },
  { line: "other", items: [], always: true, onlyWithMatters: true },
];
