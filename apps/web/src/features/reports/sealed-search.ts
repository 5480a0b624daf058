import { text, type RawSearch } from "../../service/search";

/** What of a sealed report is shown, and, right after sealing, where it leads. */
export interface SealedSearch {
  readonly show?: "answered" | "silent";
  /** Set by sealing, for the one who sealed. */
  readonly sealed?: true;
  readonly comparison?: string;
  readonly visit?: string;
}

export const sealedSearch = (raw: RawSearch): SealedSearch => ({
  show: raw["show"] === "answered" || raw["show"] === "silent" ? raw["show"] : undefined,
  sealed: raw["sealed"] === true ? true : undefined,
  comparison: text(raw["comparison"]),
  visit: text(raw["visit"]),
});
