import { Button, NativeSelect, TextInput } from "@mantine/core";
import type { Instrument } from "@evenhand/shared/report";
import { UNITS, type UnitSymbol, UnitSymbol as UnitSymbols } from "@evenhand/shared/unit";
import type { InstrumentKind } from "@evenhand/sheet/instrument-kinds";
import { useState, type FormEvent } from "react";
import { useText } from "../../strings/text";
import { withUnit } from "../sheet/answer-text";
import { TypedNumber } from "../answer/TypedNumber";
import {
  instrumentOf,
  isWhole,
  typedOf,
  unitsOf,
  withFigure,
  withKind,
  type InstrumentTyped,
} from "./instrument-form";
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

interface FieldProps {
  readonly typed: InstrumentTyped;
  readonly onTyped: (typed: InstrumentTyped) => void;
}

const KindChoice = ({ typed, onTyped, kinds }: FieldProps & Required<Pick<Props, "kinds">>) => {
  const t = useText();
  return (
    <NativeSelect
      className={styles.wide}
      size="md"
      label={t("own-instruments.kind")}
      description={t("own-instruments.kind.hint")}
      required
      value={typed.kind}
      data={[
        { value: "", label: t("own-instruments.kind.choose") },
        ...kinds.map(({ name }) => ({ value: name, label: name })),
      ]}
      onChange={(event) => onTyped(withKind(typed, event.currentTarget.value, kinds))}
    />
  );
};

interface UnitProps extends FieldProps {
  readonly units: readonly UnitSymbol[];
  readonly unit: UnitSymbol;
}

const UnitChoice = ({ typed, onTyped, units, unit }: UnitProps) => {
  const t = useText();
  return (
    <NativeSelect
      size="md"
      label={t("reading.unit")}
      value={unit}
      data={units.map((one) => ({
        value: one,
        label: withUnit("", one).trim() || UNITS[one].dimension,
      }))}
      onChange={(event) => onTyped({ ...typed, unit: UnitSymbols.parse(event.currentTarget.value) })}
    />
  );
};

const Figures = ({ typed, onTyped, unit }: Omit<UnitProps, "units">) => {
  const t = useText();
  return (["resolution", "within", "share"] as const).map((field) => (
    <TypedNumber
      key={field}
      label={t(`instruments.${field}`)}
      unit={field === "share" ? "%" : withUnit("", unit).trim()}
      value={typed.figures[field]}
      onChange={(value, text) => onTyped(withFigure(typed, field, value, text))}
    />
  ));
};

const NameField = ({ typed, onTyped }: FieldProps) => {
  const t = useText();
  return (
    <TextInput
      className={styles.wide}
      size="md"
      label={t("instruments.name")}
      required
      value={typed.name}
      onChange={(event) => onTyped({ ...typed, name: event.currentTarget.value })}
    />
  );
};

const CalibratedField = ({ typed, onTyped }: FieldProps) => {
  const t = useText();
  return (
    <TextInput
      size="md"
      type="date"
      label={t("instruments.calibrated")}
      value={typed.calibrated}
      onChange={(event) => onTyped({ ...typed, calibrated: event.currentTarget.value })}
    />
  );
};

const FormButtons = ({
  saveText,
  pending = false,
  whole,
  onCancel,
}: Pick<Props, "saveText" | "pending" | "onCancel"> & { readonly whole: boolean }) => {
  const t = useText();
  return (
    <div className={styles.buttons}>
      <Button type="submit" loading={pending} disabled={!whole}>
        {saveText ?? t("instruments.save")}
      </Button>
      <Button variant="subtle" onClick={onCancel}>
        {t("cancel")}
      </Button>
    </div>
  );
};

/** An instrument, added or changed. */
export const InstrumentForm = ({ taken, initial, kinds, onAdd, ...buttons }: Props) => {
  const [before] = useState(() => typedOf(initial));
  const [typed, setTyped] = useState(before);
  const units = unitsOf(kinds, typed.kind, before.unit);
  const unit = units.includes(typed.unit) ? typed.unit : (units[0] ?? typed.unit);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    onAdd(instrumentOf(typed, unit, { own: initial?.id, taken }));
  };
  const fields = { typed, onTyped: setTyped };
  return (
    <form className={styles.form} onSubmit={submit}>
      <NameField {...fields} />
      {kinds !== undefined && <KindChoice {...fields} kinds={kinds} />}
      <UnitChoice {...fields} units={units} unit={unit} />
      <Figures {...fields} unit={unit} />
      <CalibratedField {...fields} />
      <FormButtons {...buttons} whole={isWhole(typed, kinds !== undefined)} />
    </form>
  );
};
