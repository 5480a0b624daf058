import type { Moved } from "@evenhand/shared/http/summaries";
import { useText } from "../../strings/text";
import { useItemWords } from "../../entities/sheet/item-words";

/** What moved since the summary was made. */
export const MovedList = ({ moved }: { readonly moved: readonly Moved[] }) => {
  const t = useText();
  const words = useItemWords();
  return (
    <ul>
      {moved.map((one) => (
        <li key={`${one.what}${one.id}`}>
          {t("moved.line", {
            what: t(`moved.what.${one.what}`),
            was: one.was ?? t("moved.none"),
            now: one.now ?? t("moved.none"),
          })}
          {one.findings && one.findings.length > 0 && (
            <ul>
              {one.findings.slice(0, 20).map((finding) => (
                <li key={`${finding.item}${finding.position}`}>{words(finding)}</li>
              ))}
            </ul>
          )}
        </li>
      ))}
    </ul>
  );
};
