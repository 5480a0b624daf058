import { Button } from "@mantine/core";
import type { BeforeMoneyStanding, RecordedMatter } from "@evenhand/shared/before-money";
import type { BeforeMoneySeen } from "@evenhand/shared/http/money";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import { Form } from "../../ui/Form";
import { Notice } from "../../ui/Notice";
import { Panel, Tag } from "../../ui/Page";
import { BeforeFields } from "./BeforeFields";
import styles from "./Money.module.css";
import { useBeforeMoneyForm, type BeforeMoneyForm } from "./use-before-money-form";

type Stood = BeforeMoneyStanding["lines"][number];

const Recorded = ({ matter }: { readonly matter: RecordedMatter }) => {
  const t = useText();
  return (
    <li>
      <p className={styles.name}>
        {matter.severity === "halt" && <Tag strong>{t("before.halt")}</Tag>} {matter.headline}
      </p>
      {matter.found !== "" && <p>{matter.found}</p>}
      <p className={styles.hint}>{t("before.ends", { words: matter.decides })}</p>
    </li>
  );
};

const Record = ({ stood: { line, matters } }: { readonly stood: Stood }) => {
  const t = useText();
  if (matters.length === 0) {
    const silent = line === "payee" || line === "law";
    return <p className={styles.note}>{t(silent ? "before.record.not-on" : "before.record.none")}</p>;
  }
  return (
    <>
      <p className={styles.note}>{t("before.record")}</p>
      <ul className={styles.list}>
        {matters.map((matter) => (
          <Recorded key={matter.id} matter={matter} />
        ))}
      </ul>
    </>
  );
};

interface Props {
  readonly id: string;
  readonly seen: BeforeMoneySeen;
}

/** As it was saved, whatever is typed since. */
const useStands = ({ entries }: BeforeMoneySeen) => {
  const t = useText();
  return ({ line, open }: Stood): string =>
    open === null
      ? t(`before.closed.${entries.lines[line]?.say ?? "done"}`)
      : t("before.open", { why: t(`before.open.${open}`) });
};

const Line = (props: {
  readonly stood: Stood;
  readonly seen: BeforeMoneySeen;
  readonly form: BeforeMoneyForm;
}) => {
  const { stood, seen, form } = props;
  const t = useText();
  const { line, open } = stood;
  return (
    <Panel title={t(`before.line.${line}`)} hint={t(`before.hint.${line}`)}>
      <Record stood={stood} />
      <p className={open === null ? styles.note : styles.without}>{useStands(seen)(stood)}</p>
      <BeforeFields
        line={line}
        typed={form.typed[line]}
        unsaid={form.unsaid.has(line)}
        onChange={(more) => form.change(line, more)}
      />
    </Panel>
  );
};

/** Every line with what the record says of it and the buyer's word, and one deed to save them. */
export const BeforeMoney = ({ id, seen }: Props) => {
  const t = useText();
  const form = useBeforeMoneyForm(id, seen);
  return (
    <Form error={form.error} onSubmit={form.submit}>
      {seen.standing.lines.map((stood) => (
        <Line key={stood.line} stood={stood} seen={seen} form={form} />
      ))}
      <div className={styles.saving}>
        {form.unsaid.size > 0 && <Notice kind="refusal" title={t("before.wrong")} />}
        {form.saved !== undefined && (
          <Answered title={t("before.saved", { revision: form.saved })}>
            <p>{t("before.saved.what")}</p>
          </Answered>
        )}
        <Button type="submit" size="md" loading={form.isPending}>
          {t("before.save")}
        </Button>
      </div>
    </Form>
  );
};
