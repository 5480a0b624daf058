import { text, type RawSearch } from "../../service/search";

/** Where the person is on the sheet, in the address. */
export interface SheetSearch {
  readonly section?: string;
  readonly items?: "core" | "open";
  readonly open?: string;
}

export const sheetSearch = (raw: RawSearch): SheetSearch => ({
  section: text(raw["section"]),
  items: raw["items"] === "core" || raw["items"] === "open" ? raw["items"] : undefined,
  open: text(raw["open"]),
});
