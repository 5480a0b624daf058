import { Button, NativeSelect, TextInput } from "@mantine/core";
import { convert } from "@evenhand/measurement/unit";
import type { Instrument } from "@evenhand/shared/report";
import { UNITS, type UnitSymbol, UnitSymbol as UnitSymbols } from "@evenhand/shared/unit";
import type { InstrumentKind } from "@evenhand/sheet/instrument-kinds";
import { useState, type FormEvent } from "react";
import { useText } from "../../strings/text";
import { withUnit } from "../sheet/answer-text";
import { TypedNumber } from "../answer/TypedNumber";
import styles from "./Instruments.module.css";

interface Props {
  readonly taken: readonly string[];
  /** What is changed; absent where one is added. */
  readonly initial?: Instrument | undefined;
  /** Where given, one of them has to be chosen, and figures are typed in its units. */
  readonly kinds?: readonly InstrumentKind[];
  readonly saveText?: string | undefined;
  readonly pending?: boolean;
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

/** The figures of an instrument as one unit shows them. */
const figuresOf = (initial: Instrument | undefined) => {
  const absolute = initial?.accuracy?.absolute;
  const unit = initial?.resolution?.unit ?? absolute?.unit ?? "mm";
  const share = initial?.accuracy?.share ?? 0;
  return {
    unit,
    resolution: initial?.resolution?.value,
    within:
      absolute === undefined || absolute.unit === unit
        ? absolute?.value
        : Number(convert(absolute.value, absolute.unit, unit).toPrecision(6)),
    // A share of 0.003 is 0.3 %, not 0.30000000000000004.
    share: share === 0 ? undefined : Number((share * 100).toPrecision(12)),
  };
};

const unitsOf = (kind: InstrumentKind | undefined, was: UnitSymbol): readonly UnitSymbol[] =>
  kind === undefined
    ? UnitSymbols.options
    : kind.dimensions.includes(UNITS[was].dimension)
      ? [...new Set([...kind.units, was])]
      : kind.units;

export const InstrumentForm = ({
  taken,
  initial,
  kinds,
  saveText,
  pending = false,
  onAdd,
  onCancel,
}: Props) => {
  const t = useText();
  const [before] = useState(() => figuresOf(initial));
  const [name, setName] = useState(initial?.name ?? "");
  const [kindName, setKindName] = useState(initial?.kind ?? "");
  const [chosen, setUnit] = useState<UnitSymbol>(before.unit);
  const [resolution, setResolution] = useState(before.resolution);
  const [within, setWithin] = useState(before.within);
  const [share, setShare] = useState(before.share);
  const [calibrated, setCalibrated] = useState(initial?.calibrated ?? "");
  const units = unitsOf(
    kinds?.find((kind) => kind.name === kindName),
    before.unit,
  );
  const unit = units.includes(chosen) ? chosen : (units[0] ?? chosen);
  const [unread, setUnread] = useState<Readonly<Record<string, string | undefined>>>({});
  const typed =
    (field: string, set: (value: number | undefined) => void) =>
    (value: number | undefined, text: string | undefined): void => {
      set(value);
      setUnread((others) => ({ ...others, [field]: text }));
    };
  const chooseKind = (chosenKind: string): void => {
    setKindName(chosenKind);
    // Not under a figure that stands there already: it would say another thing.
    const usual = kinds?.find((kind) => kind.name === chosenKind)?.units[0];
    if (usual !== undefined && resolution === undefined && within === undefined) setUnit(usual);
  };
  const wrong = Object.values(unread).some((text) => text !== undefined);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    const accuracy =
      within === undefined && share === undefined
        ? undefined
        : {
            share: Number(((share ?? 0) / 100).toPrecision(12)),
            ...(within === undefined ? {} : { absolute: { value: within, unit } }),
          };
    onAdd({
      id: initial?.id ?? idFromName(name, taken),
      name: name.trim(),
      ...(resolution === undefined ? {} : { resolution: { value: resolution, unit } }),
      ...(accuracy === undefined ? {} : { accuracy }),
      ...(calibrated === "" ? {} : { calibrated }),
      ...(kindName === "" ? {} : { kind: kindName }),
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
      {kinds !== undefined && (
        <NativeSelect
          className={styles.wide}
          size="md"
          label={t("own-instruments.kind")}
          description={t("own-instruments.kind.hint")}
          required
          value={kindName}
          data={[
            { value: "", label: t("own-instruments.kind.choose") },
            ...kinds.map((kind) => ({ value: kind.name, label: kind.name })),
          ]}
          onChange={(event) => chooseKind(event.currentTarget.value)}
        />
      )}
      <NativeSelect
        size="md"
        label={t("reading.unit")}
        value={unit}
        data={units.map((one) => ({
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
        <Button
          type="submit"
          loading={pending}
          disabled={name.trim() === "" || wrong || (kinds !== undefined && kindName === "")}
        >
          {saveText ?? t("instruments.save")}
        </Button>
        <Button variant="subtle" onClick={onCancel}>
          {t("cancel")}
        </Button>
      </div>
    </form>
  );
};
