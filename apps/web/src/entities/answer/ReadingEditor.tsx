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

const Fields = ({
  spec,
  answer,
  unread,
  unit,
  onChange,
}: EditorProps<"reading"> & { readonly spec: ReadingSpec }) => {
  const t = useText();
  const wrongOf = useWrong(spec);
  const [form, setForm] = useState(() => readingForm(spec, answer, unread, unit));
  const units = usual(spec.unit, spec.alsoIn);
  const set = (next: ReadingForm): void => {
    setForm(next);
    const made = readingOf(spec, next);
    onChange(made.answer, made.unread);
  };
  const name = (slot: Slot, at: number): string => {
    const known = spec.spots.find(({ id }) => id === slot.spot)?.words.american;
    const nth = (at % spec.ask.readings) + 1;
    if (known !== undefined)
      return spec.ask.readings > 1 ? t("reading.spot.nth", { spot: known, nth }) : known;
    return spec.ask.spots > 1 ? t("reading.spot", { nth: at + 1 }) : t("reading.nth", { nth: at + 1 });
  };
  return (
    <div className={styles.reading}>
      <div className={styles.numbers}>
        {form.slots.map((slot, at) => (
          <NumberField
            key={`${slot.spot ?? ""}${at}`}
            label={name(slot, at)}
            text={slot.text}
            unit={withUnit("", form.unit).trim()}
            wrong={wrongOf(form.unit, slot)}
            onText={(text) => set(withText(form, at, text))}
          />
        ))}
      </div>
      <div className={styles.under}>
        <NativeSelect
          size="sm"
          label={t("reading.unit")}
          value={form.unit}
          onChange={(event) => {
            const chosen = units.find((one) => one === event.currentTarget.value) ?? spec.unit;
            set({ ...form, unit: chosen });
          }}
          data={units.map((one) => ({
            value: one,
            label: withUnit("", one).trim() || t("reading.ratio"),
          }))}
        />
        <Button
          variant="default"
          leftSection={<IconPlus size={16} aria-hidden="true" />}
          onClick={() => setForm(oneMore(form))}
        >
          {t("reading.more")}
        </Button>
      </div>
      <p className={styles.hint}>
        {t("reading.asked", {
          readings: spec.ask.readings,
          spots: spec.ask.spots,
          instrument: spec.instrument.name,
        })}
      </p>
    </div>
  );
};

export const ReadingEditor = (props: EditorProps<"reading">) =>
  props.item.reading ? <Fields {...props} spec={props.item.reading} /> : null;
