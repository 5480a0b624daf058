import { Button, NativeSelect, TextInput } from "@mantine/core";
import type { Instrument } from "@evenhand/shared/report";
import { UNITS, type UnitSymbol, UnitSymbol as UnitSymbols } from "@evenhand/shared/unit";
import { useState, type FormEvent } from "react";
import { useText } from "../../strings/text";
import { withUnit } from "../sheets/answer-text";
import { TypedNumber } from "./answers/TypedNumber";
import styles from "./Instruments.module.css";

interface Props {
  readonly taken: readonly string[];
  readonly onAdd: (instrument: Instrument) => void;
  readonly onCancel: () => void;
}

/** An id made of the name: lower case, digits and hyphens, unlike any that is taken. */
export const idFromName = (name: string, taken: readonly string[]): string => {
  const base =
    name
      .toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, "-")
      .replaceAll(/^-+|-+$/g, "")
      .slice(0, 50) || "instrument";
  const count = Array.from({ length: taken.length + 1 }, (_, at) => (at === 0 ? base : `${base}-${at + 1}`));
  return count.find((id) => !taken.includes(id)) ?? base;
};

export const InstrumentForm = ({ taken, onAdd, onCancel }: Props) => {
  const t = useText();
  const [name, setName] = useState("");
  const [unit, setUnit] = useState<UnitSymbol>("mm");
  const [resolution, setResolution] = useState<number>();
  const [within, setWithin] = useState<number>();
  const [share, setShare] = useState<number>();
  const [calibrated, setCalibrated] = useState("");
  const [unread, setUnread] = useState<Readonly<Record<string, string | undefined>>>({});
  const typed =
    (field: string, set: (value: number | undefined) => void) =>
    (value: number | undefined, text: string | undefined): void => {
      set(value);
      setUnread((before) => ({ ...before, [field]: text }));
    };
  const wrong = Object.values(unread).some((text) => text !== undefined);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    const accuracy =
      within === undefined && share === undefined
        ? undefined
        : {
            share: (share ?? 0) / 100,
            ...(within === undefined ? {} : { absolute: { value: within, unit } }),
          };
    onAdd({
      id: idFromName(name, taken),
      name: name.trim(),
      ...(resolution === undefined ? {} : { resolution: { value: resolution, unit } }),
      ...(accuracy === undefined ? {} : { accuracy }),
      ...(calibrated === "" ? {} : { calibrated }),
    });
  };
  const text = withUnit("", unit).trim();
  return (
    <form className={styles.form} onSubmit={submit}>
      <TextInput
        className={styles.wide}
        size="md"
        label={t("instruments.name")}
        required
        value={name}
        onChange={(event) => setName(event.currentTarget.value)}
      />
      <NativeSelect
        size="md"
        label={t("reading.unit")}
        value={unit}
        data={UnitSymbols.options.map((one) => ({
          value: one,
          label: withUnit("", one).trim() || UNITS[one].dimension,
        }))}
        onChange={(event) => setUnit(UnitSymbols.parse(event.currentTarget.value))}
      />
      <TypedNumber
        label={t("instruments.resolution")}
        unit={text}
        value={resolution}
        onChange={typed("resolution", setResolution)}
      />
      <TypedNumber
        label={t("instruments.within")}
        unit={text}
        value={within}
        onChange={typed("within", setWithin)}
      />
      <TypedNumber
        label={t("instruments.share")}
        unit="%"
        value={share}
        onChange={typed("share", setShare)}
      />
      <TextInput
        size="md"
        type="date"
        label={t("instruments.calibrated")}
        value={calibrated}
        onChange={(event) => setCalibrated(event.currentTarget.value)}
      />
      <div className={styles.buttons}>
        <Button type="submit" disabled={name.trim() === "" || wrong}>
          {t("instruments.save")}
        </Button>
        <Button variant="subtle" onClick={onCancel}>
          {t("cancel")}
        </Button>
      </div>
    </form>
  );
};
