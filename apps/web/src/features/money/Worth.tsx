import type { WorthOfLooking } from "@evenhand/shared/http/money";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { moneyText } from "../../ui/money";
import { Panel } from "../../ui/Page";

/** What knowing more before deciding would be worth, and what to look at first. */
export const Worth = ({ worth }: { readonly worth: WorthOfLooking | null }) => {
  const t = useText();
  const intl = useIntl();
  if (worth === null) return null;
  const { together, looks } = worth;
  return (
    <Panel title={t("worth.title")} hint={t("worth.plain")}>
      <p>{together.minor > 0 ? t("worth.some", { together: moneyText(intl, together) }) : t("worth.none")}</p>
      {looks.length > 0 && (
        <>
          <p>{t("worth.next")}</p>
          <ol>
            {looks.map(({ words, minutes, first }, at) => (
              <li key={at}>{t("worth.look", { words, minutes, first: first ? "yes" : "no" })}</li>
            ))}
          </ol>
        </>
      )}
    </Panel>
  );
};
