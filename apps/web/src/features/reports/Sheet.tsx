import { Button, NativeSelect, SegmentedControl } from "@mantine/core";
import type { Report } from "@evenhand/shared/report";
import type { Section } from "@evenhand/shared/sheet";
import { useCallback, useMemo, useState } from "react";
import { useText } from "../../strings/text";
import { Empty } from "../../ui/Page";
import { useFirstScroll } from "../../ui/scroll-to";
import { isAskedOf, placesFor, type Place } from "../../entities/sheet/places";
import { capital, type SheetIndex } from "../../entities/sheet/sheet-index";
import { Instruments } from "./Instruments";
import { ItemCard, type ItemGroup } from "./ItemCard";
import type { Draft } from "./SaveState";
import { SealPanel } from "./SealPanel";
import type { SheetSearch } from "./sheet-search";
import styles from "./Sheet.module.css";
import { useOwnChecks } from "./use-own-checks";
import { ViewSwitch } from "./ViewSwitch";

interface Props {
  readonly reportId: string;
  readonly report: Report;
  readonly draft: Draft;
  readonly index: SheetIndex;
  readonly search: SheetSearch;
  readonly onSearch: (change: SheetSearch) => void;
}

const grouped = (places: readonly Place[]): readonly ItemGroup[] => {
  const groups = new Map<string, { item: Place["item"]; places: Place[] }>();
  for (const place of places) {
    const group = groups.get(place.item.id);
    if (group) group.places.push(place);
    else groups.set(place.item.id, { item: place.item, places: [place] });
  }
  return [...groups.values()];
};

const title = (section: Section): string => capital(section.words.american);

/** The sheet, a section at a time. */
export const Sheet = ({ reportId, report, draft, index, search, onSearch }: Props) => {
  const t = useText();
  const { findings } = draft;
  useFirstScroll(search.open === undefined ? undefined : `place-${search.open}`);
  const checks = useOwnChecks(report, draft.draft?.handbook, index, findings);
  const { form } = report.vehicle;
  // What was answered before it was asked elsewhere still stands, and can be taken back.
  const places = useMemo(
    () => placesFor(index, form).filter(({ item, key }) => isAskedOf(item, report.kind) || findings.has(key)),
    [index, form, report.kind, findings],
  );
  // Lines that were open when the list was made stay in it, so that nothing vanishes under the finger.
  const [answeredBefore] = useState(() => new Set(findings.keys()));
  const wanted = (place: Place): boolean =>
    search.items === "core"
      ? place.item.core
      : search.items === "open"
        ? !answeredBefore.has(place.key)
        : true;
  const sections = index.sheet.sections.filter((section) =>
    places.some(({ item }) => item.section === section.id),
  );
  const current = sections.find(({ id }) => id === search.section) ?? sections[0];
  const here = places.filter((place) => place.item.section === current?.id && wanted(place));
  const progress = (section: Section): { readonly done: number; readonly all: number } => {
    const list = places.filter(
      ({ item }) => item.section === section.id && (search.items !== "core" || item.core),
    );
    return { done: list.filter(({ key }) => findings.get(key)?.finding).length, all: list.length };
  };
  const goto = (section: string): void => {
    onSearch({ section, open: undefined });
    globalThis.scrollTo({ top: 0 });
  };
  const openPlace = useCallback((open: string | undefined) => onSearch({ open }), [onSearch]);
  const next = (key: string): void => {
    const following = here[here.findIndex((place) => place.key === key) + 1];
    openPlace(following?.key);
    requestAnimationFrame(() => {
      const line = following && document.getElementById(`place-${following.key}`);
      line?.scrollIntoView({ block: "center" });
      line?.querySelector("button")?.focus({ preventScroll: true });
    });
  };
  const at = sections.findIndex(({ id }) => id === current?.id);
  const [before, after] = [sections[at - 1], sections[at + 1]];
  return (
    <div className={styles.sheet}>
      <nav className={styles.rail} aria-label={t("sheet.sections")}>
        <ViewSwitch
          view="sections"
          onView={() => onSearch({ view: "stages", section: undefined, open: undefined })}
        />
        <SegmentedControl
          fullWidth
          aria-label={t("sheet.items")}
          value={search.items ?? "all"}
          onChange={(items) => onSearch({ items: items === "core" || items === "open" ? items : undefined })}
          data={[
            { value: "all", label: t("sheet.items.all") },
            { value: "core", label: t("sheet.items.core") },
            { value: "open", label: t("sheet.items.open") },
          ]}
        />
        <NativeSelect
          className={styles.chooser}
          size="md"
          label={t("sheet.section")}
          value={current?.id ?? ""}
          onChange={(event) => goto(event.currentTarget.value)}
          data={sections.map((section) => {
            const { done, all } = progress(section);
            return {
              value: section.id,
              label: t("sheet.section.option", { number: section.number, title: title(section), done, all }),
            };
          })}
        />
        <ol className={styles.sections}>
          {sections.map((section) => {
            const { done, all } = progress(section);
            return (
              <li key={section.id}>
                <button
                  type="button"
                  aria-current={section.id === current?.id ? "step" : undefined}
                  onClick={() => goto(section.id)}
                >
                  <span className={styles.number}>{section.number}</span>
                  <span>{title(section)}</span>
                  <span className={styles.done}>
                    {done}/{all}
                  </span>
                </button>
              </li>
            );
          })}
        </ol>
      </nav>
      <div className={styles.body}>
        {current && (
          <h2 className={styles.heading}>
            <span>{current.number}</span> {title(current)}
          </h2>
        )}
        {current?.number === 0 && <Instruments reportId={reportId} draft={draft} />}
        {here.length === 0 && <Empty title={t("sheet.empty")}>{t("sheet.empty.hint")}</Empty>}
        {grouped(here).map((group) => (
          <ItemCard
            key={group.item.id}
            report={report}
            index={index}
            group={group}
            findings={findings}
            checks={checks}
            open={search.open}
            onOpen={openPlace}
            onNext={next}
            keep={draft.keep}
            settle={draft.settle}
          />
        ))}
        <div className={styles.turn}>
          {before && (
            <Button variant="default" size="md" onClick={() => goto(before.id)}>
              {t("sheet.before", { title: title(before) })}
            </Button>
          )}
          {after && (
            <Button size="md" onClick={() => goto(after.id)}>
              {t("sheet.after", { title: title(after) })}
            </Button>
          )}
        </div>
        {(after === undefined || at === 0) && (
          <SealPanel
            reportId={reportId}
            report={report}
            draft={draft}
            index={index}
            places={places}
            onGo={onSearch}
          />
        )}
      </div>
    </div>
  );
};
