import type { ReactNode } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { useTimes } from "../../entities/time/use-times";
import { useItemWords } from "../../entities/sheet/item-words";
import type { RoadShortfall, Shortfall } from "./shortfall";
import { useConflictWords } from "./use-conflict-words";

/** What is wanting before the road, line by line: an inspector reads it on a phone beside the car. */
const RoadShortfalls = ({ shortfalls }: { readonly shortfalls: readonly RoadShortfall[] }) => {
  const t = useText();
  const intl = useIntl();
  const item = useItemWords();
  const names = ({ items, places }: Pick<RoadShortfall, "items" | "places">): string =>
    intl.formatList(
      [...new Set([...items.map((id) => item({ item: id, position: "" })), ...places.map(item)])],
      { type: "conjunction" },
    );
  return (
    <>
      {t("wanting.road-cleared")}
      <ul>
        {shortfalls.map(({ code, items, places, words }) => (
          <li key={code}>
            {code === "gate-not-seen" && items.length === 0
              ? t("wanting.gate-empty")
              : t(`wanting.${code}`, {
                  items: names({ items, places }),
                  words: intl.formatList(words.filter(Boolean), { type: "conjunction" }) || "none",
                })}
          </li>
        ))}
      </ul>
    </>
  );
};

/** What is wanting, and what would work, on the site's clock. */
export const useShortfall = (zone: string): ((shortfall: Shortfall) => ReactNode) => {
  const t = useText();
  const intl = useIntl();
  const times = useTimes();
  const conflicts = useConflictWords();
  const list = (words: readonly string[]): string => intl.formatList(words, { type: "conjunction" });
  return (shortfall) => {
    switch (shortfall.code) {
      case "hold-running":
      case "answer-in-time":
      case "before-start":
      case "before-end":
        return t(`wanting.${shortfall.code}`, { when: times.full(shortfall.until, zone) });
      case "deadline-passed":
      case "near-start":
      case "past-grace":
        return t(`wanting.${shortfall.code}`, { when: times.full(shortfall.from, zone) });
      case "terms-acknowledged":
        return t("wanting.terms-acknowledged", { version: shortfall.version });
      case "independent":
        return t("wanting.independent", { conflicts: conflicts(shortfall.conflicts) });
      case "cause":
        return t("wanting.cause", { causes: list(shortfall.allowed.map((cause) => t(`cause.${cause}`))) });
      case "road-cleared":
        return <RoadShortfalls shortfalls={shortfall.shortfalls} />;
      default:
        return t(`wanting.${shortfall.code}`);
    }
  };
};
