import type { Report } from "@evenhand/shared/report";
import { useCallback, useMemo, useState } from "react";
import type { Place } from "../../../entities/sheet/places";
import type { SheetIndex } from "../../../entities/sheet/sheet-index";
import { typedField } from "../../../entities/answer/typed-field";
import { changeOf, startEdit } from "../place-edit";
import type { Draft } from "../../../offline/use-draft";
import type { SheetSearch } from "../sheet-search";
import { isOpen, nextOpen, scopeOf, walkOf, type Extent, type Said, type WalkStage } from "../walk";

type Brief = NonNullable<Draft["draft"]>["brief"] | undefined;

/** A depth asked for in the address, else what the visit's brief asks, else a first look. */
export const extentOf = (search: SheetSearch, brief: Brief): Extent =>
  search.extent ?? ((brief ?? null) === null ? "first-look" : "brief");

export const useStages = (
  index: SheetIndex,
  report: Report,
  extent: Extent,
  brief: Brief,
): readonly WalkStage[] => {
  const { form } = report.vehicle;
  return useMemo(() => walkOf(index, form, scopeOf(extent, brief)), [index, form, extent, brief]);
};

/**
 * Frames that are waited for at most, some ten seconds of them: what is open stands in the address, and where the processor is slow
 * or busy many a frame is drawn before the page follows it.
 */
const patience = 600;

/** How often something was asked to be shown: whoever has gone on meanwhile is not taken back. */
let asked = 0;

/** Brings it into sight once it is drawn, with the focus where one goes on: in its first field, else on its name. */
const show = (id: string): void => {
  asked += 1;
  const mine = asked;
  const look = (left: number): void => {
    const there = document.getElementById(id);
    const drawn = there !== null && (id === turnId || there.dataset["open"] === "true");
    if (!drawn && left > 0 && mine === asked) requestAnimationFrame(() => look(left - 1));
    if (!drawn || mine !== asked) return;
    const field = there.querySelector<HTMLElement>(typedField);
    (field ?? there.querySelector("button"))?.focus({ preventScroll: true });
    there.scrollIntoView({ block: "center" });
  };
  requestAnimationFrame(() => look(patience));
};

export const showLine = (key: string): void => show(`place-${key}`);

/** Where one goes on when every line of the stage is answered. */
export const turnId = "walk-turn";

/** From line to line of one stage, and to its end where none is left. */
export const useAdvance = (
  lines: readonly Place[],
  findings: Draft["findings"],
  onOpen: (key: string | undefined) => void,
) =>
  useCallback(
    (key: string | undefined, besides: readonly Place[] = []): void => {
      const skip = new Set(besides.map((one) => one.key));
      const left = lines.filter((one) => one.key === key || !skip.has(one.key));
      const next = nextOpen(left, findings, key)?.key;
      onOpen(next);
      if (next === undefined) show(turnId);
      else showLine(next);
    },
    [lines, findings, onOpen],
  );

/** What one press says of several places, and takes back with one. Nothing that stands there already is written over. */
export const useTogether = (report: Report, findings: Draft["findings"], keep: Draft["keep"]) => {
  const [last, setLast] = useState<readonly Said[]>([]);
  const say = useCallback(
    (wanted: readonly Said[]): void => {
      const said = wanted.filter(({ place }) => isOpen(findings, place.key));
      const time = new Date().toISOString();
      for (const { place, answer, note } of said) {
        const { grounds } = startEdit(place.item, undefined, report.instruments, undefined);
        const state = { answer, unread: undefined, grounds: { ...grounds, note }, conditions: {} };
        void keep(place.key, changeOf(place, state, time));
      }
      setLast(said);
    },
    [report.instruments, findings, keep],
  );
  const undo = (): void => {
    for (const { place } of last) void keep(place.key, { finding: null });
    setLast([]);
  };
  return { last, say, undo };
};
