import type { Report } from "@evenhand/shared/report";
import { useCallback, useMemo, useState } from "react";
import { placesFor, type Place } from "../../entities/sheet/places";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import type { Draft } from "../../offline/use-draft";
import type { SheetSearch } from "./sheet-search";
import { searchAfter, sheetPlaces, sheetView, type SheetMove } from "./sheet-view";

interface Shown {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly findings: Draft["findings"];
  readonly search: SheetSearch;
  readonly onSearch: (change: SheetSearch) => void;
}

const focusLine = (key: string | undefined): void => {
  requestAnimationFrame(() => {
    const line = key === undefined ? null : document.getElementById(`place-${key}`);
    line?.scrollIntoView({ block: "center" });
    line?.querySelector("button")?.focus({ preventScroll: true });
  });
};

/** The sheet a section at a time: its lines, what of it is shown, and how one moves about in it. */
export const useSheet = ({ report, index, findings, search, onSearch }: Shown) => {
  const { kind, vehicle } = report;
  const places: readonly Place[] = useMemo(
    () => sheetPlaces(placesFor(index, vehicle.form), kind, findings),
    [index, vehicle.form, kind, findings],
  );
  const [answeredBefore] = useState(() => new Set(findings.keys()));
  const view = sheetView({ sections: index.sheet.sections, places, findings, search, answeredBefore });
  const move = (one: SheetMove): void => {
    const change = searchAfter(view, one);
    onSearch(change);
    if (one.type === "section") globalThis.scrollTo({ top: 0 });
    if (one.type === "next") focusLine(change.open);
  };
  const onOpen = useCallback((open: string | undefined) => onSearch({ open }), [onSearch]);
  return { places, view, move, onOpen };
};
