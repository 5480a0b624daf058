import type { Stage } from "@evenhand/shared/sheet";
import { DEPTHS, STAGES } from "@evenhand/shared/terms";
import { oneOf } from "../../service/one-of";
import { text, type RawSearch } from "../../service/search";
import type { Extent } from "./walk";

/** Where the person is on the sheet, in the address. */
export interface SheetSearch {
  /** By stage, as one walks, or by section; an inspection is walked where nothing is said. */
  readonly view?: "stages" | "sections";
  readonly stage?: Stage;
  /** How much of the sheet is walked. */
  readonly extent?: Extent;
  readonly section?: string;
  readonly items?: "core" | "open";
  readonly open?: string;
}

export const sheetSearch = (raw: RawSearch): SheetSearch => ({
  view: oneOf(["stages", "sections"], raw["view"]),
  stage: oneOf(STAGES, raw["stage"]),
  extent: oneOf(["brief", ...DEPTHS], raw["extent"]),
  section: text(raw["section"]),
  items: oneOf(["core", "open"], raw["items"]),
  open: text(raw["open"]),
});

/** A section named in the address is shown as a section; else what was asked for, else an inspection is walked. */
export const isWalked = ({ view, section, stage }: SheetSearch, kind: string): boolean =>
  view === undefined
    ? stage !== undefined || (section === undefined && kind === "inspection")
    : view === "stages";
