import { NativeSelect, Textarea, TextInput } from "@mantine/core";
import { Basis, Firmness } from "@evenhand/shared/finding";
import type { Instrument } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import { useText } from "../../strings/text";
import { withUnit } from "../../entities/sheet/answer-text";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { TypedNumber } from "../../entities/answer/TypedNumber";
import styles from "./Grounds.module.css";
import type { GroundsOf } from "./place-edit";
import { spelled } from "../../entities/sheet/sheet-index";

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

const Conditions = ({ index, item, grounds, unread, onChange, onUnread }: Props) => {
  const t = useText();
  const held = grounds.conditions ?? {};
  const set = (id: string, value: boolean | number | string | undefined): void => {
    const rest = Object.fromEntries(Object.entries(held).filter(([other]) => other !== id));
    onChange({ conditions: value === undefined ? rest : { ...rest, [id]: value } });
  };
  return item.conditions.map((id) => {
    const kind = index.sheet.conditions.find((one) => one.id === id);
    const label = kind?.words.american ?? spelled(id);
    const value = held[id];
    if (kind?.ask === "number") {
      return (
        <TypedNumber
          key={id}
          label={label}
          unit={kind.unit === undefined ? "" : withUnit("", kind.unit).trim()}
          value={typeof value === "number" ? value : undefined}
          unread={unread[`condition.${id}`]}
          onChange={(number, text) => {
            set(id, number);
            onUnread(id, text);
          }}
        />
      );
    }
    if (kind?.ask === "text") {
      return (
        <TextInput
          size="md"
          key={id}
          label={label}
          defaultValue={typeof value === "string" ? value : ""}
          onChange={(event) => set(id, event.currentTarget.value.trim() || undefined)}
        />
      );
    }
    return (
      <NativeSelect
        size="md"
        key={id}
        label={label}
        value={typeof value === "boolean" ? String(value) : ""}
        data={[
          { value: "", label: t("condition.not-noted") },
          { value: "true", label: kind?.otherwise === undefined ? t("yes") : label },
          { value: "false", label: kind?.otherwise?.american ?? t("no") },
        ]}
        onChange={(event) =>
          set(id, event.currentTarget.value === "" ? undefined : event.currentTarget.value === "true")
        }
      />
    );
  });
};

/** How firmly it is said, what it rests on, with what it was read, in which circumstances. */
export const Grounds = (props: Props) => {
  const t = useText();
  const { grounds, instruments, item, onChange } = props;
  const readable = item.answer === "reading" || item.answer === "color";
  return (
    <div className={styles.grounds}>
      {readable && (
        <NativeSelect
          size="md"
          label={t("facts.instrument")}
          value={grounds.instrument ?? ""}
          data={[
            { value: "", label: t("grounds.by-eye") },
            ...instruments.map(({ id, name }) => ({ value: id, label: name })),
          ]}
          onChange={(event) => {
            const instrument = event.currentTarget.value || undefined;
            onChange({ instrument, basis: instrument === undefined ? "seen" : "measured" });
          }}
        />
      )}
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
      <Conditions {...props} />
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
    </div>
  );
};
