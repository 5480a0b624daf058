import { Button } from "@mantine/core";
import type { LandedCostSeen } from "@evenhand/shared/http/money";
import { ENTERED_LINES } from "@evenhand/shared/landed-cost";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import { TermField, TextField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { ExchangeFields } from "./ExchangeFields";
import type { EnteredLine } from "./landed-form";
import styles from "./Money.module.css";
import { MoneyFields, UnitField } from "./MoneyFields";
import { useLandedForm, type LandedForm as Typed } from "./use-landed-form";

const LineFields = ({ form, line }: { readonly form: Typed; readonly line: EnteredLine }) => {
  const t = useText();
  const name = t(`landed.line.${line}`);
  const typed = form.typed.lines[line];
  const change = (more: Partial<typeof typed>): void =>
    form.change({ lines: { ...form.typed.lines, [line]: { ...typed, ...more } } });
  return (
    <li className={styles.row}>
      <p className={styles.name}>{name}</p>
      <div className={styles.fields}>
        <MoneyFields typed={typed} of={name} wrong={form.wrong.has(`amount-${line}`)} onChange={change} />
        <TextField
          className={styles.source}
          label={t("landed.source")}
          aria-label={t("landed.source.of", { line: name })}
          maxLength={300}
          value={typed.source}
          error={form.wrong.has(`source-${line}`) && t("landed.wrong.source")}
          onChange={(source) => change({ source })}
        />
      </div>
    </li>
  );
};

const TripFields = ({ form: { typed, wrong, change } }: { readonly form: Typed }) => {
  const t = useText();
  return (
    <li className={styles.row}>
      <p className={styles.name}>{t("landed.trip")}</p>
      <div className={styles.fields}>
        <TextField
          className={styles.amount}
          label={t("landed.distance")}
          inputMode="decimal"
          value={typed.distance}
          error={wrong.has("distance") && t("landed.wrong.distance")}
          onChange={(distance) => change({ distance })}
        />
        <UnitField value={typed.unit} onChange={(unit) => change({ unit })} />
        <TermField
          label={t("landed.carrier")}
          value={typed.carrier}
          terms={["open", "enclosed"]}
          wordFor={(carrier) => t(`landed.carrier.${carrier}`)}
          onChange={(carrier) => change({ carrier })}
        />
      </div>
    </li>
  );
};

const LimitFields = ({ form: { typed, wrong, change } }: { readonly form: Typed }) => {
  const t = useText();
  const name = t("landed.limit");
  return (
    <li className={styles.row}>
      <p className={styles.name}>
        {name}
        <span className={styles.hint}>{t("landed.limit.hint")}</span>
      </p>
      <div className={styles.fields}>
        <MoneyFields
          typed={typed.limit}
          of={name}
          wrong={wrong.has("limit")}
          onChange={(limit) => change({ limit })}
        />
      </div>
    </li>
  );
};

const Saving = ({ form: { wrong, saved, isPending } }: { readonly form: Typed }) => {
  const t = useText();
  return (
    <div className={styles.saving}>
      {wrong.size > 0 && <Notice kind="refusal" title={t("landed.wrong.some")} />}
      {saved !== undefined && (
        <Answered title={t("landed.saved", { revision: saved })}>
          <p>{t("landed.saved.what")}</p>
        </Answered>
      )}
      <Button type="submit" size="md" loading={isPending}>
        {t("landed.save")}
      </Button>
    </div>
  );
};

interface Props {
  readonly id: string;
  readonly seen: LandedCostSeen;
}

/** What a buyer enters for a car, over what is stored. */
export const LandedForm = ({ id, seen }: Props) => {
  const t = useText();
  const form = useLandedForm(id, seen);
  return (
    <Form error={form.error} onSubmit={form.submit}>
      <Panel title={t("landed.enter")} hint={t("landed.enter.hint")}>
        <ul className={styles.list}>
          {ENTERED_LINES.flatMap((line) => [
            <LineFields key={line} form={form} line={line} />,
            ...(line === "transport" ? [<TripFields key="trip" form={form} />] : []),
          ])}
          <LimitFields form={form} />
        </ul>
        <ExchangeFields form={form} />
        <Saving form={form} />
      </Panel>
    </Form>
  );
};
