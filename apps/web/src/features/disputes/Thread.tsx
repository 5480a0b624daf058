import type { Release } from "@evenhand/shared/http/releases";
import type { Evidence, ThreadEntry } from "@evenhand/shared/settlement";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { moneyText } from "../../ui/money";
import styles from "./Disputes.module.css";
import { Photograph } from "./Photograph";

const useDeed = (): ((entry: ThreadEntry) => string) => {
  const t = useText();
  const intl = useIntl();
  return ({ move, by, to, remedy }) =>
    t(`settle.did.${move}`, {
      by,
      state: t(`release.state.${to}`),
      remedy: remedy?.kind ?? "",
      amount: remedy?.kind === "price" ? moneyText(intl, remedy.off) : "",
    });
};

const Shown = ({ one }: { readonly one: Evidence }) => {
  const t = useText();
  const intl = useIntl();
  if (one.kind === "document")
    return (
      <li>
        {t("settle.said.document", { name: one.says === null ? one.name : `${one.name}: ${one.says}` })}
      </li>
    );
  if (one.kind === "photograph")
    return (
      <li>
        <Photograph id={one.id} name={t("settle.said.photograph")} />
      </li>
    );
  const { of, unit, instrument } = one;
  const value = intl.formatNumber(one.value, { maximumFractionDigits: 6 });
  return <li>{t("settle.said.reading", { of, value, unit, instrument })}</li>;
};

const Entry = ({ entry }: { readonly entry: ThreadEntry }) => {
  const intl = useIntl();
  const deed = useDeed();
  const at = intl.formatDate(entry.at, {
    month: "short",
    day: "numeric",
    hour: "numeric",
    minute: "2-digit",
  });
  return (
    <li className={styles.entry} data-by={entry.by}>
      <p>
        <strong>{deed(entry)}</strong> <time dateTime={entry.at}>{at}</time>
      </p>
      {entry.words !== null && <blockquote className={styles.words}>“{entry.words}”</blockquote>}
      {entry.evidence.length > 0 && (
        <ul className={styles.evidence}>
          {entry.evidence.map((one, place) => (
            <Shown key={place} one={one} />
          ))}
        </ul>
      )}
    </li>
  );
};

/** Everything done about a line so far: who, when, with which words and evidence. */
export const Thread = ({ release: { thread } }: { readonly release: Release }) => {
  const t = useText();
  if (thread.length === 0) return null;
  return (
    <ol className={styles.thread} aria-label={t("settle.thread")}>
      {thread.map((entry, place) => (
        <Entry key={place} entry={entry} />
      ))}
    </ol>
  );
};
