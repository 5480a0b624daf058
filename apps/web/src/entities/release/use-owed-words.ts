import type { CaseMatter, CaseMatterState } from "@evenhand/shared/http/cases";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { dayAndHour } from "../time/day-and-hour";

export type Owed = NonNullable<CaseMatter["owed"]>;
type Asked = { readonly as: Owed["of"]; readonly zone: string | null };

/** What is owed, where it is no answer. */
const whatOf: Partial<Record<Owed["state"], string>> = {
  revising: "report",
  "looking-again": "look",
  promised: "remedy",
};

/** A moment by the clock of a site, its zone named; by the reader's own where there is no site. Reckons in no zone itself. */
export const useDueTime = (): ((at: string, zone: string | null) => string) => {
  const intl = useIntl();
  return (at, zone) => intl.formatDate(at, { ...dayAndHour, weekday: "short", timeZone: zone ?? undefined });
};

/** Whose answer is due until when, on the clock of the site by whose hours it was reckoned, its zone named. */
export const useOwedWords = (): ((owed: Owed, asked: Asked) => string) => {
  const t = useText();
  const dueTime = useDueTime();
  return ({ of, state, until }, { as, zone }) =>
    t("settle.owed", {
      whose: of === as ? "yours" : of,
      what: whatOf[state] ?? "answer",
      when: until === null ? "none" : dueTime(until, zone),
    });
};

type Standing = Pick<CaseMatter, "laid" | "lines" | "owed"> & { readonly state: CaseMatterState };

/** How a matter stands between buyer and dealer, how much of it was laid where that is a part, and what it waits for. */
export const useMatterStanding = (): ((standing: Standing, asked: Asked) => string) => {
  const t = useText();
  const owedWords = useOwedWords();
  return ({ state, laid, lines, owed }, asked) => {
    const words = t(`matter.state.${state}`);
    const whole = laid === lines || laid === 0 || state === "answered-for";
    const said = whole ? words : t("case.matter.part", { state: words, laid, lines });
    return owed === null || state === "answered-for"
      ? said
      : t("settle.standing", { state: said, owed: owedWords(owed, asked) });
  };
};
