import { Button } from "@mantine/core";
import type { Report } from "@evenhand/shared/report";
import type { KeptFinding } from "../../offline/store";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import type { Place } from "../../entities/sheet/places";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { Conflict } from "./Conflict";
import type { Draft } from "../../offline/use-draft";

const Lost = ({ onAgain }: { readonly onAgain: () => void }) => {
  const t = useText();
  return (
    <Notice kind="refusal" title={t("place.lost")}>
      <p>{t("place.lost.what")}</p>
      <div>
        <Button onClick={onAgain}>{t("place.lost.again")}</Button>
      </div>
    </Notice>
  );
};

const Refused = ({ kept }: { readonly kept: KeptFinding }) => {
  const t = useText();
  return (
    <Notice kind="refusal" title={t("place.refused")}>
      <ul>
        {(kept.problems ?? []).map(({ at, reason }) => (
          <li key={`${at}${reason}`}>{reason}</li>
        ))}
      </ul>
    </Notice>
  );
};

interface Props {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly place: Place;
  readonly kept: KeptFinding | undefined;
  readonly onSettle: Draft["settle"];
  readonly onAgain: () => void;
}

/** What keeps an answer from having arrived and wants the person: two that stand, a refusal, a device that could not keep it. */
export const PlaceTrouble = ({ kept, onAgain, ...rest }: Props) => {
  if (kept?.state === "conflict") return <Conflict kept={kept} {...rest} />;
  if (kept?.state === "refused") return <Refused kept={kept} />;
  return kept?.state === "lost" ? <Lost onAgain={onAgain} /> : null;
};
