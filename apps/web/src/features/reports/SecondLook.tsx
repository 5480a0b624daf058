import { Button } from "@mantine/core";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { readyToSeal } from "../../offline/before-seal";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import type { Place } from "../../entities/sheet/places";
import { askedPlaces, lookedAt } from "./look-again";
import { PlaceList } from "./PlaceList";
import type { Draft } from "../../offline/use-draft";
import type { SheetSearch } from "./sheet-search";

interface Props {
  readonly reportId: string;
  readonly draft: Draft;
  readonly places: readonly Place[];
  readonly onGo: (change: SheetSearch) => void;
  /** Something on this device has not arrived, or nothing is answered. */
  readonly blocked: boolean;
  readonly onError: (error: unknown) => void;
}

/** Asks the service where to look again, of exactly what this person sees. */
const useAsk = (reportId: string, onError: Props["onError"]) => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: async () => {
      const revision = await readyToSeal(reportId, (id) => call("reports.get", { params: { id } }));
      return call("reports.lookAgain", { params: { id: reportId }, ifMatch: revision });
    },
    onMutate: () => onError(null),
    onError,
    onSuccess: () => queries.invalidateQueries({ queryKey: ["report", reportId] }),
  });
};

const Ask = ({ reportId, blocked, onError }: Props) => {
  const t = useText();
  const ask = useAsk(reportId, onError);
  return (
    <Notice kind="note" title={t("look.title")}>
      <p>{t("look.what")}</p>
      <div>
        <Button variant="default" disabled={blocked} loading={ask.isPending} onClick={() => ask.mutate()}>
          {t("look.ask")}
        </Button>
      </div>
    </Notice>
  );
};

/** Before the seal of an inspection: the places to look at again, once they were asked for, and never what was stated of them. */
export const SecondLook = (props: Props) => {
  const t = useText();
  const { draft, places, onGo } = props;
  const { secondLook, versions = [] } = draft.draft ?? {};
  if (!secondLook) return versions.length === 0 ? <Ask {...props} /> : null;
  const { again, open } = lookedAt(places, askedPlaces(secondLook), draft.findings);
  return (
    <Notice kind="note" title={t("look.asked", { again: again.length, all: again.length + open.length })}>
      <p>{t("look.asked.what")}</p>
      <PlaceList places={open} onGo={onGo} />
    </Notice>
  );
};
