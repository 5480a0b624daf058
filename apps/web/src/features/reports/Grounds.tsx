import { NativeSelect, Textarea } from "@mantine/core";
import { Basis, Firmness } from "@evenhand/shared/finding";
import type { Instrument } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import { useText } from "../../strings/text";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { Conditions } from "./Conditions";
import styles from "./Grounds.module.css";
import type { GroundsOf } from "./place-edit";

interface Props {
  readonly index: SheetIndex;
  readonly item: Item;
  readonly grounds: GroundsOf;
  readonly instruments: readonly Instrument[];
  /** Conditions typed as what cannot be read, by `condition.<id>`. */
  readonly unread: Readonly<Record<string, string>>;
  readonly onChange: (change: Partial<GroundsOf>) => void;
  readonly onUnread: (condition: string, text: string | undefined) => void;
}

const InstrumentChoice = ({
  grounds,
  instruments,
  onChange,
}: Pick<Props, "grounds" | "instruments" | "onChange">) => {
  const t = useText();
  return (
    <NativeSelect
      size="md"
      label={t("facts.instrument")}
      value={grounds.instrument ?? ""}
      data={[
        { value: "", label: t("grounds.no-instrument") },
        ...instruments.map(({ id, name }) => ({ value: id, label: name })),
      ]}
      onChange={(event) => {
        const instrument = event.currentTarget.value || undefined;
        onChange({ instrument, basis: instrument === undefined ? "seen" : "measured" });
      }}
    />
  );
};

/** How firmly it is said, and what it rests on. */
const Standing = ({ grounds, onChange }: Pick<Props, "grounds" | "onChange">) => {
  const t = useText();
  return (
    <>
      <NativeSelect
        size="md"
        label={t("facts.firmness")}
        value={grounds.firmness}
        data={Firmness.options.map((one) => ({ value: one, label: t(`firmness.${one}`) }))}
        onChange={(event) => onChange({ firmness: Firmness.parse(event.currentTarget.value) })}
      />
      <NativeSelect
        size="md"
        label={t("facts.basis")}
        value={grounds.basis}
        data={Basis.options.map((one) => ({ value: one, label: t(`basis.${one}`) }))}
        onChange={(event) => onChange({ basis: Basis.parse(event.currentTarget.value) })}
      />
    </>
  );
};

const Note = ({ grounds, onChange }: Pick<Props, "grounds" | "onChange">) => {
  const t = useText();
  return (
    <Textarea
      size="md"
      className={styles.note}
      label={t("facts.note")}
      autosize
      minRows={1}
      maxRows={6}
      maxLength={4000}
      defaultValue={grounds.note ?? ""}
      onChange={(event) => onChange({ note: event.currentTarget.value.trim() || undefined })}
    />
  );
};

/** How firmly it is said, what it rests on, with what it was read, in which circumstances. */
export const Grounds = ({ index, item, grounds, instruments, unread, onChange, onUnread }: Props) => {
  const isMeasured = item.answer === "reading" || item.answer === "color";
  return (
    <div className={styles.grounds}>
      {isMeasured && <InstrumentChoice grounds={grounds} instruments={instruments} onChange={onChange} />}
      <Standing grounds={grounds} onChange={onChange} />
      <Conditions
        index={index}
        item={item}
        held={grounds.conditions}
        unread={unread}
        onChange={(conditions) => onChange({ conditions })}
        onUnread={onUnread}
      />
      <Note grounds={grounds} onChange={onChange} />
    </div>
  );
};
