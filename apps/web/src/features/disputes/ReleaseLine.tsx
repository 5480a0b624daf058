import type { Release } from "@evenhand/shared/http/releases";
import { useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { OutcomeSign } from "../../ui/OutcomeSign";
import { Tag } from "../../ui/Page";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { capital, itemWords, positionWords, spelled } from "../../entities/sheet/sheet-index";

/** The sheet that releases are worded by; a release names items only. */
export const useReleaseWords = () => {
  const index = useQuery(sheetQuery("evenhand", 1)).data;
  return (release: Release): string => {
    const { item, position } = release.entry;
    const place = index ? positionWords(index, index.items.get(item), position) : spelled(position);
    return capital([itemWords(index, item), place].filter((part) => part !== "").join(", "));
  };
};

export const ReleaseLine = ({ release }: { readonly release: Release }) => {
  const t = useText();
  const intl = useIntl();
  const words = useReleaseWords();
  return (
    <Line
      main={
        <Link to="/released" search={{ vehicle: release.vehicle }} hash={`release-${release.id}`}>
          {words(release)}
        </Link>
      }
      sub={t("release.line", { date: intl.formatDate(release.releasedAt, { dateStyle: "medium" }) })}
      end={
        <>
          <OutcomeSign outcome={release.entry.outcome} size={26} />
          <Tag strong={release.state === "released"}>{t(`release.state.${release.state}`)}</Tag>
        </>
      }
    />
  );
};
