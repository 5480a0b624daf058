import { NativeSelect, TextInput } from "@mantine/core";
import type { Finding } from "@evenhand/shared/finding";
import type { Item, Sheet } from "@evenhand/shared/sheet";
import { useText } from "../../strings/text";
import { TypedNumber } from "../../entities/answer/TypedNumber";
import { withUnit } from "../../entities/sheet/answer-text";
import { spelled, type SheetIndex } from "../../entities/sheet/sheet-index";

type Value = boolean | number | string | undefined;

interface FieldProps {
  readonly label: string;
  readonly kind: Sheet["conditions"][number] | undefined;
  readonly value: Value;
  /** Typed as what cannot be read. */
  readonly unread: string | undefined;
  readonly onChange: (value: Value) => void;
  readonly onUnread: (text: string | undefined) => void;
}

const NumberField = ({ label, kind, value, unread, onChange, onUnread }: FieldProps) => (
  <TypedNumber
    label={label}
    unit={kind?.unit === undefined ? "" : withUnit("", kind.unit).trim()}
    value={typeof value === "number" ? value : undefined}
    unread={unread}
    onChange={(number, text) => {
      onChange(number);
      onUnread(text);
    }}
  />
);

const TextField = ({ label, value, onChange }: FieldProps) => (
  <TextInput
    size="md"
    label={label}
    defaultValue={typeof value === "string" ? value : ""}
    onChange={(event) => onChange(event.currentTarget.value.trim() || undefined)}
  />
);

const YesNoField = ({ label, kind, value, onChange }: FieldProps) => {
  const t = useText();
  return (
    <NativeSelect
      size="md"
      label={label}
      value={typeof value === "boolean" ? String(value) : ""}
      data={[
        { value: "", label: t("condition.not-noted") },
        { value: "true", label: kind?.otherwise === undefined ? t("yes") : label },
        { value: "false", label: kind?.otherwise?.american ?? t("no") },
      ]}
      onChange={({ currentTarget: { value: chosen } }) =>
        onChange(chosen === "" ? undefined : chosen === "true")
      }
    />
  );
};

const fieldOf = { number: NumberField, text: TextField } as const;

interface Props {
  readonly index: SheetIndex;
  readonly item: Item;
  readonly held: Finding["conditions"];
  /** Conditions typed as what cannot be read, by `condition.<id>`. */
  readonly unread: Readonly<Record<string, string>>;
  readonly onChange: (held: Finding["conditions"]) => void;
  readonly onUnread: (condition: string, text: string | undefined) => void;
}

/** The circumstances an item wants noted, each with the field its kind is noted in. */
export const Conditions = ({ index, item, held = {}, unread, onChange, onUnread }: Props) => {
  const set = (id: string, value: Value): void => {
    const rest = Object.fromEntries(Object.entries(held).filter(([other]) => other !== id));
    onChange(value === undefined ? rest : { ...rest, [id]: value });
  };
  return item.conditions.map((id) => {
    const kind = index.sheet.conditions.find((one) => one.id === id);
    const Field = kind?.ask === "number" || kind?.ask === "text" ? fieldOf[kind.ask] : YesNoField;
    return (
      <Field
        key={id}
        label={kind?.words.american ?? spelled(id)}
        kind={kind}
        value={held[id]}
        unread={unread[`condition.${id}`]}
        onChange={(value) => set(id, value)}
        onUnread={(text) => onUnread(id, text)}
      />
    );
  });
};
