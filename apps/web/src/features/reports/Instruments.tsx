import { ActionIcon, Button } from "@mantine/core";
import type { Instrument } from "@evenhand/shared/report";
import { IconTrash } from "@tabler/icons-react";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { InstrumentForm } from "../../entities/instrument/InstrumentForm";
import styles from "../../entities/instrument/Instruments.module.css";
import type { Draft } from "./SaveState";
import { useInstrumentFacts } from "../../entities/instrument/use-instrument-facts";

interface Props {
  readonly reportId: string;
  readonly draft: Draft;
}

const useChange = (reportId: string) => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: async (change: (instruments: readonly Instrument[]) => Instrument[]) => {
      const { revision, report } = await call("reports.get", { params: { id: reportId } });
      return call("reports.change", {
        params: { id: reportId },
        ifMatch: revision,
        body: { instruments: change(report.instruments) },
      });
    },
    onSuccess: () => queries.invalidateQueries({ queryKey: ["report", reportId] }),
  });
};

/** As many stand open; a whole case of them folds away. */
const fewInstruments = 5;

/** The instruments of this visit: their resolution and accuracy decide how firmly a reading can confirm. */
export const Instruments = ({ reportId, draft }: Props) => {
  const t = useText();
  const [adding, setAdding] = useState(false);
  const change = useChange(reportId);
  const instruments = draft.draft?.report.instruments ?? [];
  const facts = useInstrumentFacts();
  return (
    <Panel title={t("instruments.title")} hint={t("instruments.hint")}>
      {instruments.length === 0 && !adding && <p className={styles.none}>{t("instruments.none")}</p>}
      {instruments.length > 0 && (
        <details open={instruments.length <= fewInstruments}>
          <summary className={styles.summary}>
            {t("instruments.count", { count: instruments.length })}
          </summary>
          <ul className={styles.list}>
            {instruments.map((one) => (
              <li key={one.id}>
                <span>
                  <strong>{one.name}</strong>
                  <span className={styles.facts}>{facts(one)}</span>
                </span>
                <ActionIcon
                  variant="default"
                  size={42}
                  aria-label={t("instruments.remove", { name: one.name })}
                  onClick={() => change.mutate((list) => list.filter(({ id }) => id !== one.id))}
                >
                  <IconTrash size={18} aria-hidden="true" />
                </ActionIcon>
              </li>
            ))}
          </ul>
        </details>
      )}
      {change.error !== null && <ProblemNotice error={change.error} />}
      {adding ? (
        <InstrumentForm
          taken={instruments.map(({ id }) => id)}
          onCancel={() => setAdding(false)}
          onAdd={(made) => {
            change.mutate((list) => [...list, made]);
            setAdding(false);
          }}
        />
      ) : (
        <div>
          <Button variant="default" onClick={() => setAdding(true)}>
            {t("instruments.add")}
          </Button>
        </div>
      )}
    </Panel>
  );
};
