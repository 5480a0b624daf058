import { Button, Checkbox, Textarea, TextInput } from "@mantine/core";
import type { DecisionRequest, SummarySeen } from "@evenhand/shared/http/summaries";
import type { Summary, SummaryItem } from "@evenhand/shared/summary";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { parseMoney } from "../../ui/money";
import { Choices } from "../reports/answers/Choices";
import { placeKey } from "../sheets/places";
import { DecisionProblem } from "./DecisionProblem";
import { useItemWords } from "./item-words";
import styles from "./Summary.module.css";

interface Props {
  readonly summary: Summary;
  readonly seen: SummarySeen;
  readonly onDecided: () => void;
}

type Kind = DecisionRequest["decision"];
const kinds = ["approve", "counter", "decline"] as const satisfies readonly Kind[];
/** The service asks for as many. */
const fewestLetters = 10;

interface SafetyGroup {
  readonly item: string;
  /** Each place once, however many lines it has. */
  readonly places: readonly SummaryItem[];
}

/** The places of one item are answered for together; the words go with each of them. */
const groupsOf = (items: readonly SummaryItem[]): readonly SafetyGroup[] => {
  const groups = new Map<string, Map<string, SummaryItem>>();
  for (const one of items) {
    const places = groups.get(one.item) ?? new Map<string, SummaryItem>();
    groups.set(one.item, places.set(placeKey(one.item, one.position), one));
  }
  return [...groups].map(([item, places]) => ({ item, places: [...places.values()] }));
};

const isEnough = (words: string | undefined): boolean => (words ?? "").trim().length >= fewestLetters;

const acknowledgementsOf = (
  groups: readonly SafetyGroup[],
  words: Readonly<Record<string, string>>,
): DecisionRequest["acknowledgements"] =>
  groups
    .filter(({ item }) => isEnough(words[item]))
    .flatMap(({ item, places }) =>
      places.map(({ position }) => ({ item, position, words: (words[item] ?? "").trim() })),
    );

interface SafetyProps {
  readonly groups: readonly SafetyGroup[];
  readonly words: Readonly<Record<string, string>>;
  readonly onWords: (item: string, words: string) => void;
}

const Safety = ({ groups, words, onWords }: SafetyProps) => {
  const t = useText();
  const intl = useIntl();
  const nameOf = useItemWords();
  const placesOf = ({ places }: SafetyGroup): string =>
    intl.formatList(
      places.map((one) => {
        const place = nameOf.position(one);
        const outcome = t(`outcome.${one.outcome}`);
        return place === "" ? outcome : t("decide.safety.place", { place, outcome });
      }),
      { type: "unit" },
    );
  return (
    <fieldset className={styles.safety}>
      <legend>{t("decide.safety", { count: groups.length })}</legend>
      <p className={styles.note}>{t("decide.safety.hint")}</p>
      {groups.map((group) => (
        <Textarea
          key={group.item}
          size="md"
          autosize
          minRows={1}
          label={nameOf({ item: group.item, position: "" })}
          description={placesOf(group)}
          value={words[group.item] ?? ""}
          onChange={(event) => onWords(group.item, event.currentTarget.value)}
        />
      ))}
    </fieldset>
  );
};

/** Approve, counter or decline exactly what is on this page. */
export const Decide = ({ summary, seen, onDecided }: Props) => {
  const t = useText();
  const queries = useQueryClient();
  const [kind, setKind] = useState<Kind>();
  const [words, setWords] = useState<Readonly<Record<string, string>>>({});
  const [price, setPrice] = useState("");
  const [conditions, setConditions] = useState("");
  const [understood, setUnderstood] = useState(false);
  const safety = groupsOf(summary.openSafety);
  const decide = useMutation({
    mutationFn: (decision: Kind) => {
      const money = decision === "counter" ? parseMoney(price, "USD") : null;
      const text = conditions.trim();
      return call("summaries.decide", {
        params: { id: seen.id },
        body: {
          decision,
          hash: seen.hash,
          acknowledgements: decision === "decline" ? [] : acknowledgementsOf(safety, words),
          ...(money === null ? {} : { price: money }),
          ...(text === "" ? {} : { conditions: text }),
        },
      });
    },
    onSuccess: onDecided,
    onSettled: () => queries.invalidateQueries(),
  });
  const unacknowledged = safety.filter(({ item }) => !isEnough(words[item])).length;
  const ready =
    (kind === "approve" && unacknowledged === 0 && understood) ||
    (kind === "counter" && (parseMoney(price, "USD") !== null || conditions.trim() !== "")) ||
    kind === "decline";
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (kind !== undefined) decide.mutate(kind);
  };
  return (
    <div className="no-print">
      <Panel title={t("decide.title")} hint={t("decide.hint")}>
        <form className={styles.form} onSubmit={submit}>
          <Choices
            stacked
            legend={t("decide.title")}
            name="decision"
            value={kind}
            options={kinds.map((value) => ({
              value,
              label: t(`decide.${value}`),
              hint: t(`decide.${value}.hint`),
            }))}
            onChange={setKind}
          />
          {kind === "approve" && safety.length > 0 && (
            <Safety
              groups={safety}
              words={words}
              onWords={(item, text) => setWords({ ...words, [item]: text })}
            />
          )}
          {kind === "counter" && (
            <div className={styles.row}>
              <TextInput
                size="md"
                inputMode="decimal"
                label={t("decide.price")}
                leftSection="$"
                value={price}
                onChange={(event) => setPrice(event.currentTarget.value)}
              />
              <Textarea
                size="md"
                autosize
                label={t("decide.conditions")}
                description={t("decide.conditions.hint")}
                value={conditions}
                onChange={(event) => setConditions(event.currentTarget.value)}
              />
            </div>
          )}
          {kind === "approve" && (
            <Checkbox
              size="md"
              label={t("decide.understood")}
              checked={understood}
              onChange={(event) => setUnderstood(event.currentTarget.checked)}
            />
          )}
          {decide.error !== null && <DecisionProblem error={decide.error} comparison={seen.comparison} />}
          {kind !== undefined && (
            <div>
              <Button type="submit" size="md" disabled={!ready} loading={decide.isPending}>
                {t(`decide.${kind}.do`)}
              </Button>
              {kind === "approve" && unacknowledged > 0 && (
                <output className={styles.note}>{t("decide.safety.left", { count: unacknowledged })}</output>
              )}
            </div>
          )}
        </form>
      </Panel>
    </div>
  );
};
