import { Checkbox, NativeSelect } from "@mantine/core";
import { useEffect, useRef, type ReactNode } from "react";
import type { MessageId } from "../../strings/en";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { CheckedInput, hintBelow } from "./CheckedInput";
import { DateForms } from "./DateForms";
import {
  carFields,
  figureFields,
  figureUnits,
  patternFields,
  units,
  type MakerTyped,
  type TextField,
} from "./maker-form";
import type { MakerProblems } from "./maker-problems";
import styles from "./OwnFigures.module.css";
import { useFigure } from "./use-figure";
import { useParts } from "./use-parts";
import { useWrong } from "./use-wrong";

interface Props {
  readonly entry: MakerTyped;
  readonly problems: MakerProblems | undefined;
  readonly tried: boolean;
  readonly onChange: (entry: MakerTyped) => void;
}

const hints: Readonly<Partial<Record<TextField, MessageId>>> = {
  model: "own.field.model.hint",
  source: "own.field.source.hint",
  axleRatios: "own.field.axleRatios.hint",
  cylinderNeighbors: "own.field.cylinderNeighbors.hint",
  compressionLowestShare: "own.field.compressionLowestShare.hint",
  timing: "own.field.timing.hint",
  toeFront: "own.field.toe.hint",
  toeRear: "own.field.toe.hint",
  chassisPattern: "own.field.chassisPattern.hint",
  stampEngine: "own.field.stampEngine.hint",
  stampGearbox: "own.field.stampGearbox.hint",
};
const unitOf: Readonly<Partial<Record<TextField, string>>> = figureUnits;
const years: readonly TextField[] = ["fromYear", "toYear"];
const wide: readonly TextField[] = ["source", "axleRatios", ...patternFields];

const Part = ({ title, children }: { title: string; children: ReactNode }) => (
  <fieldset className={styles.part}>
    <legend>{title}</legend>
    {children}
  </fieldset>
);

/** One text field of the entry. */
const Field = ({ name, first, ...props }: Props & { readonly name: TextField; readonly first?: boolean }) => {
  const t = useText();
  const { unitText } = useFigure();
  const wrong = useWrong(props.problems);
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (first === true) input.current?.focus();
  }, [first]);
  const unit = unitOf[name];
  const hint = hints[name];
  return (
    <CheckedInput
      ref={input}
      className={wide.includes(name) ? styles.wide : undefined}
      label={t(`own.field.${name}`)}
      hint={hint && t(hint)}
      unit={unit && unitText(unit)}
      numeric={(unit !== undefined && !SIGNED.includes(name)) || years.includes(name)}
      required={name === "make" || name === "source"}
      value={props.entry.text[name]}
      tried={props.tried}
      wrong={wrong(name)}
      onChange={(value) => props.onChange({ ...props.entry, text: { ...props.entry.text, [name]: value } })}
    />
  );
};

/** The number pad of some phones has no minus. */
const SIGNED: readonly TextField[] = ["timing", "toeFront", "toeRear"];

const Cam = ({ entry, onChange }: Props) => {
  const t = useText();
  const choices = ["stock", "other", "unknown"] as const;
  return (
    <NativeSelect
      size="md"
      inputWrapperOrder={hintBelow}
      label={t("own.cam")}
      description={t("own.cam.hint")}
      value={entry.cam}
      data={[
        { value: "", label: t("own.cam.none") },
        ...choices.map((value) => ({ value, label: t(`own.cam.${value}`) })),
      ]}
      onChange={({ currentTarget: { value } }) =>
        onChange({ ...entry, cam: choices.find((choice) => choice === value) ?? "" })
      }
    />
  );
};

const NeverStamped = ({ entry, onChange }: Props) => {
  const t = useText();
  return (
    <Checkbox.Group
      size="md"
      label={t("own.never-stamped")}
      value={[...entry.neverStamped]}
      onChange={(chosen) =>
        onChange({ ...entry, neverStamped: units.filter((unit) => chosen.includes(unit)) })
      }
    >
      <div className={styles.choices}>
        {units.map((unit) => (
          <Checkbox key={unit} size="md" value={unit} label={t(`own.unit.${unit}`)} />
        ))}
      </div>
    </Checkbox.Group>
  );
};

const LowVolume = ({ entry, onChange }: Props) => {
  const t = useText();
  const parts = useParts(entry.lowVolumeParts);
  return (
    <Checkbox.Group
      size="md"
      label={t("own.low-volume")}
      description={t("own.low-volume.hint")}
      value={[...entry.lowVolumeParts]}
      onChange={(chosen) => onChange({ ...entry, lowVolumeParts: chosen })}
    >
      <div className={styles.choices}>
        {parts.map(({ id, words }) => (
          <Checkbox key={id} size="md" value={id} label={words} />
        ))}
      </div>
    </Checkbox.Group>
  );
};

/** Fields side by side, and what else belongs beside them. */
const Fields = ({
  names,
  children,
  ...props
}: Props & { readonly names: readonly TextField[]; readonly children?: ReactNode }) => (
  <div className={styles.fields}>
    {names.map((name) => (
      <Field key={name} {...props} name={name} first={name === "make"} />
    ))}
    {children}
  </div>
);

/** An entry that holds no figure at all says nothing. */
const NoFigure = ({ problems, tried }: Props) => {
  const t = useText();
  return (
    tried &&
    problems?.has("figures") === true && (
      <div tabIndex={-1} data-wrong="true">
        <Notice kind="refusal" title={t("own.wrong.no-figure")}>
          <p>{t("own.wrong.no-figure.what")}</p>
        </Notice>
      </div>
    )
  );
};

const MakerDates = ({ entry, problems, tried, onChange }: Props) => (
  <DateForms
    rows={entry.dateForms}
    problems={problems}
    tried={tried}
    onChange={(dateForms) => onChange({ ...entry, dateForms })}
  />
);

/** Everything a firm may know of a make, a model or some years of it. */
export const MakerFields = (props: Props) => {
  const t = useText();
  return (
    <div className={styles.parts}>
      <Part title={t("own.maker.cars")}>
        <Fields {...props} names={carFields} />
      </Part>
      <NoFigure {...props} />
      <Part title={t("own.maker.figures")}>
        <Fields {...props} names={["axleRatios", ...figureFields, "cylinderNeighbors"]}>
          <Cam {...props} />
        </Fields>
      </Part>
      <Part title={t("own.maker.numbers")}>
        <Fields {...props} names={patternFields} />
        <NeverStamped {...props} />
      </Part>
      <Part title={t("own.maker.dates")}>
        <MakerDates {...props} />
        <LowVolume {...props} />
      </Part>
    </div>
  );
};
