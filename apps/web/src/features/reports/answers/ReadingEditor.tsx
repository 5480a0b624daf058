import { Button, NativeSelect } from "@mantine/core";
import { convert } from "@evenhand/measurement/unit";
import type { AnswerOf, ReadingValue } from "@evenhand/shared/answer";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { IconPlus } from "@tabler/icons-react";
import { useState } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { quantity, withUnit } from "../../sheets/answer-text";
import styles from "./Answers.module.css";
import { NumberField } from "./NumberField";
import type { EditorProps } from "./editor";

interface Slot {
  readonly value: number | undefined;
  readonly spot: string | undefined;
}

/** As many fields as the sheet asks for, each with its spot, plus whatever more was read. */
const slotsOf = (spec: ReadingSpec, values: readonly ReadingValue[]): readonly Slot[] => {
  const asked = Array.from({ length: spec.ask.spots * spec.ask.readings }, (_, at) => {
    const spot =
      spec.spots[Math.floor(at / spec.ask.readings)]?.id ??
      (spec.ask.spots > 1 ? `spot-${Math.floor(at / spec.ask.readings) + 1}` : undefined);
    return { value: undefined, spot };
  });
  const rest = [...values];
  const filled = asked.map((slot): Slot => {
    const at = rest.findIndex((one) => one.spot === slot.spot);
    const [found] = at === -1 ? [] : rest.splice(at, 1);
    return found ? { value: found.value, spot: found.spot } : slot;
  });
  return [...filled, ...rest.map(({ value, spot }) => ({ value, spot }))];
};

const usual = (unit: UnitSymbol, units: readonly UnitSymbol[]): readonly UnitSymbol[] => [
  ...new Set([unit, ...units]),
];

export const ReadingEditor = ({ item, answer, onChange }: EditorProps<"reading">) => {
  const t = useText();
  const intl = useIntl();
  const spec = item.reading;
  const [unit, setUnit] = useState<UnitSymbol>(answer?.unit ?? spec?.unit ?? "1");
  const [slots, setSlots] = useState(() => (spec ? slotsOf(spec, answer?.values ?? []) : []));
  if (!spec) return null;
  const inBase = (value: number): number => convert(value, unit, spec.unit);
  const implausible = (value: number | undefined): boolean =>
    value !== undefined && (inBase(value) < spec.plausible[0] || inBase(value) > spec.plausible[1]);
  const send = (next: readonly Slot[], nextUnit: UnitSymbol): void => {
    const values = next.filter((slot): slot is Slot & { value: number } => slot.value !== undefined);
    const made: AnswerOf<"reading"> = {
      kind: "reading",
      unit: nextUnit,
      values: values.map(({ value, spot }) => (spot === undefined ? { value } : { value, spot })),
    };
    onChange(values.length === 0 ? null : made);
  };
  const set = (at: number, value: number | undefined): void => {
    const next = slots.map((slot, index) => (index === at ? { ...slot, value } : slot));
    setSlots(next);
    if (!next.some((slot) => implausible(slot.value))) send(next, unit);
  };
  const name = (slot: Slot, at: number): string => {
    const known = spec.spots.find(({ id }) => id === slot.spot)?.words.american;
    const nth = (at % spec.ask.readings) + 1;
    if (known !== undefined)
      return spec.ask.readings > 1 ? t("reading.spot.nth", { spot: known, nth }) : known;
    return spec.ask.spots > 1 ? t("reading.spot", { nth: at + 1 }) : t("reading.nth", { nth: at + 1 });
  };
  const range = spec.plausible.map((value) =>
    quantity(intl, Number(convert(value, spec.unit, unit).toPrecision(4)), unit),
  );
  const wrong = slots.some((slot) => implausible(slot.value));
  return (
    <div className={styles.reading}>
      <div className={styles.numbers}>
        {slots.map((slot, at) => (
          <NumberField
            key={`${slot.spot ?? ""}${at}`}
            label={name(slot, at)}
            value={slot.value}
            unit={withUnit("", unit).trim()}
            invalid={implausible(slot.value)}
            onChange={(value) => set(at, value)}
          />
        ))}
      </div>
      {wrong && (
        <p className={styles.wrong} role="alert">
          {t("reading.implausible", { low: range[0] ?? "", high: range[1] ?? "" })}
        </p>
      )}
      <div className={styles.under}>
        <NativeSelect
          size="sm"
          label={t("reading.unit")}
          value={unit}
          onChange={(event) => {
            const next =
              usual(spec.unit, spec.alsoIn).find((one) => one === event.currentTarget.value) ?? spec.unit;
            setUnit(next);
            send(slots, next);
          }}
          data={usual(spec.unit, spec.alsoIn).map((one) => ({
            value: one,
            label: withUnit("", one).trim() || t("reading.ratio"),
          }))}
        />
        <Button
          variant="default"
          leftSection={<IconPlus size={16} aria-hidden="true" />}
          onClick={() => setSlots([...slots, { value: undefined, spot: undefined }])}
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
