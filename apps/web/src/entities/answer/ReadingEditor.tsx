import { Button, NativeSelect } from "@mantine/core";
import { convert } from "@evenhand/measurement/unit";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { IconPlus } from "@tabler/icons-react";
import { useState } from "react";
import { useText } from "../../strings/text";
import { quantity, withUnit } from "../sheet/answer-text";
import styles from "./Answers.module.css";
import { NumberField } from "./NumberField";
import type { EditorProps } from "./editor";
import {
  oneMore,
  readingForm,
  readingOf,
  slotState,
  withText,
  type ReadingForm,
  type Slot,
} from "./reading-form";

const usual = (unit: UnitSymbol, units: readonly UnitSymbol[]): readonly UnitSymbol[] => [
  ...new Set([unit, ...units]),
];

/** Why a field cannot be taken as it stands. */
const useWrong = (spec: ReadingSpec) => {
  const t = useText();
  return (unit: UnitSymbol, slot: Slot): string | undefined => {
    const state = slotState(spec, unit, slot);
    if (state === "unreadable") return t("number.unread");
    if (state !== "implausible") return undefined;
    const [low, high] = spec.plausible.map((value) =>
      quantity(Number(convert(value, spec.unit, unit).toPrecision(4)), unit),
    );
    return t("reading.implausible", { low: low ?? "", high: high ?? "" });
  };
};

/** What a field of the reading is called: its spot, or its number among those asked for. */
const useSlotName = (spec: ReadingSpec) => {
  const t = useText();
  return (slot: Slot, at: number): string => {
    const known = spec.spots.find(({ id }) => id === slot.spot)?.words.american;
    const nth = (at % spec.ask.readings) + 1;
    if (known !== undefined)
      return spec.ask.readings > 1 ? t("reading.spot.nth", { spot: known, nth }) : known;
    return spec.ask.spots > 1 ? t("reading.spot", { nth: at + 1 }) : t("reading.nth", { nth: at + 1 });
  };
};

interface FormProps {
  readonly spec: ReadingSpec;
  readonly form: ReadingForm;
  readonly onForm: (form: ReadingForm) => void;
}

const Numbers = ({ spec, form, onForm }: FormProps) => {
  const wrongOf = useWrong(spec);
  const name = useSlotName(spec);
  return (
    <div className={styles.numbers}>
      {form.slots.map((slot, at) => (
        <NumberField
          key={`${slot.spot ?? ""}${at}`}
          label={name(slot, at)}
          text={slot.text}
          unit={withUnit("", form.unit).trim()}
          wrong={wrongOf(form.unit, slot)}
          onText={(text) => onForm(withText(form, at, text))}
        />
      ))}
    </div>
  );
};

const UnitChoice = ({ spec, form, onForm }: FormProps) => {
  const t = useText();
  const units = usual(spec.unit, spec.alsoIn);
  // A count of keys is nothing but a number; hours are hours, though nothing else can be chosen.
  if (units.length === 1 && spec.unit === "1") return null;
  return (
    <NativeSelect
      size="sm"
      label={t("reading.unit")}
      value={form.unit}
      onChange={(event) => {
        const chosen = units.find((one) => one === event.currentTarget.value) ?? spec.unit;
        onForm({ ...form, unit: chosen });
      }}
      data={units.map((one) => ({ value: one, label: withUnit("", one).trim() || t("reading.ratio") }))}
    />
  );
};

const Asked = ({ spec: { ask, instrument } }: Pick<FormProps, "spec">) => {
  const t = useText();
  return (
    <p className={styles.hint}>
      {t("reading.asked", { readings: ask.readings, spots: ask.spots, instrument: instrument.name })}
    </p>
  );
};

type FieldsProps = EditorProps<"reading"> & { readonly spec: ReadingSpec };

const Fields = ({ spec, answer, unread, unit, onChange }: FieldsProps) => {
  const t = useText();
  const [form, setForm] = useState(() => readingForm(spec, answer, unread, unit));
  const onForm = (next: ReadingForm): void => {
    setForm(next);
    const made = readingOf(spec, next);
    onChange(made.answer, made.unread);
  };
  const fields = { spec, form, onForm };
  return (
    <div className={styles.reading}>
      <Numbers {...fields} />
      <div className={styles.under}>
        <UnitChoice {...fields} />
        <Button
          variant="default"
          leftSection={<IconPlus size={16} aria-hidden="true" />}
          onClick={() => setForm(oneMore(form))}
        >
          {t("reading.more")}
        </Button>
      </div>
      <Asked spec={spec} />
    </div>
  );
};

export const ReadingEditor = (props: EditorProps<"reading">) =>
  props.item.reading ? <Fields {...props} spec={props.item.reading} /> : null;
