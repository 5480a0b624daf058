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
import type { Draft } from "../../offline/use-draft";
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

type Change = ReturnType<typeof useChange>["mutate"];

/** As many stand open; a whole case of them folds away. */
const fewInstruments = 5;

const InstrumentRow = ({ one, onChange }: { readonly one: Instrument; readonly onChange: Change }) => {
  const t = useText();
  const facts = useInstrumentFacts();
  return (
    <li>
      <span>
        <strong>{one.name}</strong>
        <span className={styles.facts}>{facts(one)}</span>
      </span>
      <ActionIcon
        variant="default"
        size={42}
        aria-label={t("instruments.remove", { name: one.name })}
        onClick={() => onChange((list) => list.filter(({ id }) => id !== one.id))}
      >
        <IconTrash size={18} aria-hidden="true" />
      </ActionIcon>
    </li>
  );
};

interface ListProps {
  readonly instruments: readonly Instrument[];
  readonly onChange: Change;
}

const InstrumentList = ({ instruments, onChange }: ListProps) => {
  const t = useText();
  return (
    <details open={instruments.length <= fewInstruments}>
      <summary className={styles.summary}>{t("instruments.count", { count: instruments.length })}</summary>
      <ul className={styles.list}>
        {instruments.map((one) => (
          <InstrumentRow key={one.id} one={one} onChange={onChange} />
        ))}
      </ul>
    </details>
  );
};

type AddProps = ListProps & { readonly adding: boolean; readonly onAdding: (adding: boolean) => void };

const AddInstrument = ({ instruments, onChange, adding, onAdding }: AddProps) => {
  const t = useText();
  if (!adding)
    return (
      <div>
        <Button variant="default" onClick={() => onAdding(true)}>
          {t("instruments.add")}
        </Button>
      </div>
    );
  return (
    <InstrumentForm
      taken={instruments.map(({ id }) => id)}
      onCancel={() => onAdding(false)}
      onAdd={(made) => {
        onChange((list) => [...list, made]);
        onAdding(false);
      }}
    />
  );
};

/** The instruments of this visit: their resolution and accuracy decide how firmly a reading can confirm. */
export const Instruments = ({ reportId, draft }: Props) => {
  const t = useText();
  const [adding, setAdding] = useState(false);
  const change = useChange(reportId);
  const instruments = draft.draft?.report.instruments ?? [];
  const list = { instruments, onChange: change.mutate };
  return (
    <Panel title={t("instruments.title")} hint={t("instruments.hint")}>
      {instruments.length === 0 && !adding && <p className={styles.none}>{t("instruments.none")}</p>}
      {instruments.length > 0 && <InstrumentList {...list} />}
      {change.error !== null && <ProblemNotice error={change.error} />}
      <AddInstrument {...list} adding={adding} onAdding={setAdding} />
    </Panel>
  );
};
