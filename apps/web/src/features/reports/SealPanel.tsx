import { Button, Checkbox } from "@mantine/core";
import type { Report } from "@evenhand/shared/report";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useNavigate } from "@tanstack/react-router";
import { useState } from "react";
import { NotReadyToSeal, readyToSeal } from "../../offline/before-seal";
import { saveWord, sealBlocks } from "../../offline/save-state";
import type { KeptFinding } from "../../offline/store";
import { call } from "../../service/client";
import { Refusal } from "../../service/refusal";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { placeKey, type Place } from "../../entities/sheet/places";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import type { Draft } from "./SaveState";
import styles from "./SealPanel.module.css";
import type { SheetSearch } from "./sheet-search";

interface Props {
  readonly reportId: string;
  readonly report: Report;
  readonly draft: Draft;
  readonly index: SheetIndex;
  readonly places: readonly Place[];
  readonly onGo: (change: SheetSearch) => void;
  /** Every line of `places` is asked; else those are that stand on every sheet. */
  readonly allAsked?: boolean;
}

const nameOf = (place: Place): string =>
  [place.item.words.american, place.words].filter((part) => part !== "").join(", ");

const goTo = (place: Props["places"][number], onGo: Props["onGo"]): void => {
  onGo({ section: place.item.section, items: undefined, open: place.key });
  requestAnimationFrame(() =>
    document.getElementById(`place-${place.key}`)?.scrollIntoView({ block: "center" }),
  );
};

const PlaceList = ({ places, onGo }: Pick<Props, "places" | "onGo">) => {
  const t = useText();
  const [all, setAll] = useState(false);
  const shown = all ? places : places.slice(0, 8);
  return (
    <ul className={styles.list}>
      {shown.map((place) => (
        <li key={place.key}>
          <button type="button" onClick={() => goTo(place, onGo)}>
            {nameOf(place)}
          </button>
        </li>
      ))}
      {places.length > shown.length && (
        <li>
          <Button variant="subtle" size="compact-sm" onClick={() => setAll(true)}>
            {t("seal.more", { count: places.length - shown.length })}
          </Button>
        </li>
      )}
    </ul>
  );
};

const NotReady = ({
  reason: { why, places: keys },
  places,
  onGo,
}: Pick<Props, "places" | "onGo"> & { readonly reason: NotReadyToSeal["reason"] }) => {
  const t = useText();
  return (
    <Notice kind="refusal" title={t(`seal.${why}`, { count: keys.length })}>
      <p>{t(`seal.${why}.what`)}</p>
      <PlaceList places={places.filter(({ key }) => keys.includes(key))} onGo={onGo} />
    </Notice>
  );
};

const useSeal = (reportId: string, visit: string | null | undefined) => {
  const queries = useQueryClient();
  const navigate = useNavigate();
  return useMutation({
    mutationFn: async () => {
      const revision = await readyToSeal(reportId, (id) => call("reports.get", { params: { id } }));
      return call("reports.seal", { params: { id: reportId }, ifMatch: revision });
    },
    onSuccess: async (sealed) => {
      await queries.invalidateQueries();
      await navigate({
        to: "/report-versions/$version",
        params: { version: sealed.id },
        search: { sealed: true, comparison: sealed.comparison ?? undefined, visit: visit ?? undefined },
      });
    },
  });
};

/** What stands between the draft and its seal, and what sealing means. */
export const SealPanel = ({ reportId, report, draft, places, onGo, allAsked = false }: Props) => {
  const t = useText();
  const [understood, setUnderstood] = useState(false);
  const seal = useSeal(reportId, draft.draft?.visit);
  const { findings, standing } = draft;
  const where = (is: (kept: KeptFinding) => boolean): readonly Place[] =>
    places.filter(({ key }) => {
      const kept = findings.get(key);
      return kept !== undefined && is(kept);
    });
  const held = [
    ["lost", where(({ state }) => state === "lost")],
    ["conflicts", where(({ state }) => state === "conflict")],
    ["refused", where(({ state }) => state === "refused")],
    ["unread", where(({ unread }) => unread !== undefined)],
  ] as const;
  const openCore = places.filter(({ item, key }) => (allAsked || item.core) && !findings.get(key)?.finding);
  const answered = places.filter(({ key }) => findings.get(key)?.finding).length;
  const blocks = sealBlocks(standing, answered);
  const problems = seal.error instanceof Refusal ? (seal.error.problem.problems ?? []) : [];
  const faulty = places.filter((place) =>
    problems.some(({ item, position }) => item !== undefined && placeKey(item, position ?? "") === place.key),
  );
  const kind = report.kind === "inspection" ? "inspection" : "statement";
  return (
    <Panel title={t(`seal.title.${kind}`)} hint={t("seal.hint")}>
      <ul className={styles.checks}>
        <li data-ok={answered > 0}>{t("seal.answered", { answered, all: places.length })}</li>
        {blocks.includes("keeping") && <li data-ok={false}>{t("seal.keeping")}</li>}
        {standing.waiting > 0 && <li data-ok={false}>{t("seal.waiting", { count: standing.waiting })}</li>}
        {saveWord(standing) === "saved" && <li data-ok={true}>{t("seal.sent")}</li>}
        {held.map(([what, list]) =>
          list.length === 0 ? null : (
            <li key={what} data-ok={false}>
              {t(`seal.${what}`, { count: list.length })}
              <PlaceList places={list} onGo={onGo} />
            </li>
          ),
        )}
        {openCore.length > 0 && (
          <li>
            {t(allAsked ? "seal.open.asked" : `seal.open.${kind}`, { count: openCore.length })}
            <PlaceList places={openCore} onGo={onGo} />
          </li>
        )}
      </ul>
      {seal.error instanceof NotReadyToSeal ? (
        <NotReady reason={seal.error.reason} places={places} onGo={onGo} />
      ) : (
        seal.error !== null && <ProblemNotice error={seal.error} />
      )}
      {faulty.length > 0 && <PlaceList places={faulty} onGo={onGo} />}
      <Notice kind="note" title={t("seal.means")}>
        <p>{t(`seal.means.${kind}`)}</p>
      </Notice>
      <Checkbox
        size="md"
        label={t(`seal.understood.${kind}`)}
        checked={understood}
        onChange={(event) => setUnderstood(event.currentTarget.checked)}
      />
      <div>
        <Button
          size="md"
          disabled={blocks.length > 0 || !understood}
          loading={seal.isPending}
          onClick={() => seal.mutate()}
        >
          {t(`seal.do.${kind}`)}
        </Button>
      </div>
    </Panel>
  );
};
