import { Button, Checkbox, Textarea, TextInput } from "@mantine/core";
import type { DecisionRequest, SummarySeen } from "@evenhand/shared/http/summaries";
import type { Summary, SummaryItem } from "@evenhand/shared/summary";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
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
}

type Kind = DecisionRequest["decision"];
const kinds = ["approve", "counter", "decline"] as const satisfies readonly Kind[];
/** The service asks for as many. */
const fewestLetters = 10;

/** One acknowledgement a place, however many lines it has. */
const placesOf = (items: readonly SummaryItem[]): readonly SummaryItem[] => [
  ...new Map(items.map((one) => [placeKey(one.item, one.position), one])).values(),
];

interface SafetyProps {
  readonly items: readonly SummaryItem[];
  readonly words: Readonly<Record<string, string>>;
  readonly onWords: (key: string, words: string) => void;
}

const Safety = ({ items, words, onWords }: SafetyProps) => {
  const t = useText();
  const nameOf = useItemWords();
  return (
    <fieldset className={styles.safety}>
      <legend>{t("decide.safety", { count: items.length })}</legend>
      <p className={styles.note}>{t("decide.safety.hint")}</p>
      {items.map((one) => {
        const key = placeKey(one.item, one.position);
        return (
          <Textarea
            key={key}
            size="md"
            autosize
            minRows={1}
            label={nameOf(one)}
            description={`${t(`outcome.${one.outcome}`)} · ${t(`standing.${one.standing}`)}`}
            value={words[key] ?? ""}
            onChange={(event) => onWords(key, event.currentTarget.value)}
          />
        );
      })}
    </fieldset>
  );
};

/** Approve, counter or decline exactly what is on this page. */
export const Decide = ({ summary, seen }: Props) => {
  const t = useText();
  const queries = useQueryClient();
  const [kind, setKind] = useState<Kind>();
  const [words, setWords] = useState<Readonly<Record<string, string>>>({});
  const [price, setPrice] = useState("");
  const [conditions, setConditions] = useState("");
  const [understood, setUnderstood] = useState(false);
  const safety = placesOf(summary.openSafety);
  const decide = useMutation({
    mutationFn: (decision: Kind) => {
      const money = decision === "counter" ? parseMoney(price, "USD") : null;
      const text = conditions.trim();
      return call("summaries.decide", {
        params: { id: seen.id },
        body: {
          decision,
          hash: seen.hash,
          acknowledgements:
            decision === "decline"
              ? []
              : safety
                  .map(({ item, position }) => ({
                    item,
                    position,
                    words: (words[placeKey(item, position)] ?? "").trim(),
                  }))
                  .filter((one) => one.words.length >= fewestLetters),
          ...(money === null ? {} : { price: money }),
          ...(text === "" ? {} : { conditions: text }),
        },
      });
    },
    onSettled: () => queries.invalidateQueries(),
  });
  const unacknowledged = safety.filter(
    ({ item, position }) => (words[placeKey(item, position)] ?? "").trim().length < fewestLetters,
  ).length;
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
              items={safety}
              words={words}
              onWords={(key, text) => setWords({ ...words, [key]: text })}
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
