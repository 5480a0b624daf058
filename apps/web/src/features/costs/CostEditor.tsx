import { Button } from "@mantine/core";
import type { CostTable } from "@evenhand/shared/cost-table";
import type { CostTableSeen } from "@evenhand/shared/http/summaries";
import { useQuery } from "@tanstack/react-query";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import { TextField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { CostRowFields } from "./CostRowFields";
import styles from "./Costs.module.css";
import { isUnset, type CostedRow } from "./cost-form";
import { costsOfferedQuery } from "./queries";
import { useCostForm, type CostForm } from "./use-cost-form";

const Offered = ({ fill }: { readonly fill: (table: CostTable) => void }) => {
  const t = useText();
  const { data } = useQuery(costsOfferedQuery);
  if (data === undefined || data.items.length === 0) return null;
  return (
    <Panel title={t("costs.offered")} hint={t("costs.offered.hint")}>
      <div className={styles.buttons}>
        {data.items.map(({ firm, table }) => (
          <Button key={firm.id} variant="default" onClick={() => fill(table)}>
            {t("costs.offered.take", { firm: firm.name })}
          </Button>
        ))}
      </div>
    </Panel>
  );
};

const Head = ({ form: { typed, change } }: { readonly form: CostForm }) => {
  const t = useText();
  const set = typed.rows.filter((row) => !isUnset(row)).length;
  return (
    <div className={styles.head}>
      <TextField
        label={t("costs.name")}
        required
        value={typed.name}
        onChange={(name) => change({ ...typed, name })}
      />
      <TextField
        label={t("costs.currency")}
        required
        pattern="[A-Z]{3}"
        maxLength={3}
        value={typed.currency}
        onChange={(currency) => change({ ...typed, currency: currency.toUpperCase() })}
      />
      <p className={styles.hint}>{t("costs.set", { set, all: typed.rows.length })}</p>
    </div>
  );
};

const Saving = ({ form: { wrong, saved, isPending } }: { readonly form: CostForm }) => {
  const t = useText();
  return (
    <div className={styles.saving}>
      {wrong.length > 0 && (
        <Notice kind="refusal">
          <p>
            {t("costs.wrong.some", {
              count: wrong.length,
              rows: wrong.map(({ words, row }) => words || row).join("; "),
            })}
          </p>
        </Notice>
      )}
      {saved !== undefined && (
        <Answered title={t("costs.saved", { revision: saved })}>
          <p>{t("costs.saved.what")}</p>
        </Answered>
      )}
      <Button type="submit" size="md" loading={isPending}>
        {t("costs.save")}
      </Button>
    </div>
  );
};

const Sections = ({ form, costed }: { readonly form: CostForm } & Pick<Props, "costed">) => {
  const t = useText();
  const costedOf = new Map(costed.map((row) => [row.row, row]));
  const sections = Map.groupBy(form.typed.rows, ({ row }) => costedOf.get(row)?.section ?? t("costs.others"));
  return [...sections].map(([section, rows]) => (
    <Panel key={section} title={section}>
      <ul className={styles.list}>
        {rows.map((row) => (
          <CostRowFields
            key={row.row}
            row={row}
            costed={costedOf.get(row.row)}
            currency={form.typed.currency}
            said={form.wrong.includes(row)}
            onChange={form.changeRow}
          />
        ))}
      </ul>
    </Panel>
  ));
};

interface Props {
  readonly seen: CostTableSeen;
  readonly costed: readonly CostedRow[];
  /** A buyer may begin with a firm's figures. */
  readonly offered: boolean;
}

/** Every row of the sheet that can cost something, section by section, over what is stored. */
export const CostEditor = ({ seen, costed, offered }: Props) => {
  const form = useCostForm(seen, costed);
  return (
    <Form error={form.error} onSubmit={form.submit}>
      {offered && <Offered fill={form.fill} />}
      <Panel>
        <Head form={form} />
      </Panel>
      <Sections form={form} costed={costed} />
      <Saving form={form} />
    </Form>
  );
};
