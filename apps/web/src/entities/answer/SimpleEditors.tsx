import { HOUSE_GRADES, NOT_SEEN_REASONS, PRESENCE, WORKING } from "@evenhand/shared/terms";
import { NativeSelect, TextInput } from "@mantine/core";
import { CodeSystem, IN_WORDS } from "@evenhand/shared/sheet";
import { presenceWords } from "@evenhand/sheet/presence-words";
import { useState } from "react";
import { useText } from "../../strings/text";
import styles from "./Answers.module.css";
import { useByHand } from "./use-by-hand";
import { answerAfter, chosenOptions, standsAlone } from "./several-choices";
import { Choices } from "./Choices";
import type { EditorProps } from "./editor";

export const WorkingEditor = ({ item, name, answer, onChange, onPick }: EditorProps<"working">) => {
  const t = useText();
  return (
    <Choices
      legend={item.words.american}
      name={name}
      value={answer?.value}
      options={WORKING.map((value) => ({ value, label: t(`answer.working.${value}`) }))}
      onChange={(value) => onChange({ kind: "working", value })}
      onPick={onPick && ((value) => onPick({ kind: "working", value }))}
    />
  );
};

export const PresenceEditor = ({ item, name, answer, onChange, onPick }: EditorProps<"presence">) => {
  const t = useText();
  return (
    <Choices
      legend={item.words.american}
      name={name}
      value={answer?.value}
      options={PRESENCE.map((value) => ({
        value,
        label: presenceWords(item, value) ?? t(`answer.presence.${value}`),
      }))}
      onChange={(value) => onChange({ kind: "presence", value })}
      onPick={onPick && ((value) => onPick({ kind: "presence", value }))}
    />
  );
};

const OneChoice = ({ item, name, answer, onChange, onPick }: EditorProps<"choice">) => (
  <Choices
    stacked
    legend={item.words.american}
    name={name}
    value={answer?.option}
    options={(item.choice?.options ?? []).map(({ id, words }) => ({ value: id, label: words.american }))}
    onChange={(option) => onChange({ kind: "choice", option })}
    onPick={onPick && ((option) => onPick({ kind: "choice", option }))}
  />
);

/** Several can be true at once; what is good, or not known, is so alone. */
const SeveralChoices = ({ item, answer, onChange, onPick }: EditorProps<"choice">) => {
  const t = useText();
  const { props, taken } = useByHand();
  const chosen = chosenOptions(answer);
  const toggle = (id: string): void => {
    const next = answerAfter(item, answer, id);
    if (taken() && onPick && next !== null && standsAlone(item, next.option)) onPick(next);
    else onChange(next);
  };
  return (
    <fieldset className={styles.choices} data-stacked>
      <legend className={styles.hint}>{t("choice.several")}</legend>
      {(item.choice?.options ?? []).map(({ id, words }) => (
        <label key={id} className={styles.choice} data-chosen={chosen.includes(id)} {...props}>
          <input type="checkbox" checked={chosen.includes(id)} onChange={() => toggle(id)} />
          <span>{words.american}</span>
        </label>
      ))}
    </fieldset>
  );
};

export const ChoiceEditor = (props: EditorProps<"choice">) =>
  props.item.choice?.several === true ? <SeveralChoices {...props} /> : <OneChoice {...props} />;

interface ScaleProps extends Pick<EditorProps<"grade">, "scales"> {
  readonly scale: string;
  readonly onScale: (scale: string) => void;
}

const ScaleChoice = ({ scales, scale, onScale }: ScaleProps) => {
  const t = useText();
  return (
    <NativeSelect
      label={t("grade.scale")}
      value={scale}
      onChange={(event) => onScale(event.currentTarget.value)}
      data={[
        { value: "house", label: t("grade.house") },
        ...scales.map(({ id, name: label }) => ({ value: id, label })),
      ]}
    />
  );
};

export const GradeEditor = ({ item, name, scales, answer, onChange, onPick }: EditorProps<"grade">) => {
  const t = useText();
  const [scale, setScale] = useState(answer?.scale ?? "house");
  const own = scales.find(({ id }) => id === scale);
  const options = own
    ? own.grades.map(({ id, name: label }) => ({ value: id, label })).toReversed()
    : HOUSE_GRADES.map((value) => ({ value, label: t(`grade.${value}`) })).toReversed();
  return (
    <div className={styles.stack}>
      <Choices
        stacked={options.length > 5}
        legend={item.words.american}
        name={name}
        value={answer?.scale === scale ? String(answer.value) : undefined}
        options={options}
        onChange={(value: string) => onChange({ kind: "grade", scale, value })}
        onPick={onPick && ((value: string) => onPick({ kind: "grade", scale, value }))}
      />
      {scales.length > 0 && <ScaleChoice scales={scales} scale={scale} onScale={setScale} />}
    </div>
  );
};

export const CodeEditor = ({ item, answer, onChange }: EditorProps<"code">) => {
  const t = useText();
  const system = item.code?.system ?? CodeSystem.enum.text;
  return (
    <TextInput
      size="md"
      label={t(`code.system.${system}`)}
      description={t("code.as-it-stands")}
      defaultValue={answer?.text ?? ""}
      autoCapitalize={IN_WORDS.has(system) ? "sentences" : "characters"}
      autoCorrect="off"
      spellCheck={false}
      autoComplete="off"
      styles={{ input: { fontFamily: "var(--mantine-font-family-monospace)", letterSpacing: "0.05em" } }}
      onChange={(event) => {
        const text = event.currentTarget.value.trim();
        onChange(text === "" ? null : { kind: "code", text });
      }}
    />
  );
};

export const NotSeenEditor = ({ item, name, answer, onChange, onPick }: EditorProps<"not-seen">) => {
  const t = useText();
  return (
    <Choices
      legend={t("not-seen.why", { item: item.words.american })}
      name={name}
      value={answer?.reason}
      options={NOT_SEEN_REASONS.map((value) => ({ value, label: t(`not-seen.${value}`) }))}
      onChange={(reason) => onChange({ kind: "not-seen", reason })}
      onPick={onPick && ((reason) => onPick({ kind: "not-seen", reason }))}
    />
  );
};
