import { Checkbox, NativeSelect } from "@mantine/core";
import { ColorAnswer, type AnswerOf } from "@evenhand/shared/answer";
import { useState } from "react";
import type { Unread } from "../../offline/store";
import { useText } from "../../strings/text";
import styles from "./Answers.module.css";
import type { EditorProps } from "./editor";
import { NumberField } from "./NumberField";
import { parseNumber } from "./parse-number";

type Color = AnswerOf<"color">;
const geometries = ColorAnswer.shape.geometry.options;

const parts = ["L", "a", "b"] as const;
type Part = (typeof parts)[number];

/** What the three fields say. A color that is not whole is none yet; what was typed of it stays. */
export const colorOf = (
  texts: Readonly<Record<Part, string>>,
  geometry: Color["geometry"],
  metallic: boolean,
): { readonly answer: Color | null; readonly unread: Unread | undefined } => {
  const read = parts.map((part) => parseNumber(texts[part]));
  const [L, a, b] = read;
  const typed = parts.filter((part) => texts[part].trim() !== "");
  if (L !== undefined && a !== undefined && b !== undefined && L >= 0 && L <= 100)
    return { answer: { kind: "color", geometry, metallic, values: [{ L, a, b }] }, unread: undefined };
  const left = Object.fromEntries(typed.map((part) => [`color.${part}`, texts[part]]));
  return { answer: null, unread: typed.length === 0 ? undefined : { texts: left } };
};

/** The color as it is typed. */
interface ColorForm {
  readonly texts: Readonly<Record<Part, string>>;
  readonly geometry: Color["geometry"];
  readonly metallic: boolean;
}

const colorForm = ({ answer, unread }: Pick<EditorProps<"color">, "answer" | "unread">): ColorForm => {
  const first = answer?.values[0];
  const textOf = (part: Part): string => unread?.texts[`color.${part}`] ?? first?.[part].toString() ?? "";
  return {
    texts: { L: textOf("L"), a: textOf("a"), b: textOf("b") },
    geometry: answer?.geometry ?? "45/0",
    metallic: answer?.metallic ?? false,
  };
};

const madeOf = ({ texts, geometry, metallic }: ColorForm) => colorOf(texts, geometry, metallic);

const isUnread = (text: string): boolean => text.trim() !== "" && parseNumber(text) === undefined;

interface FormProps {
  readonly form: ColorForm;
  readonly onForm: (form: ColorForm) => void;
}

const Numbers = ({ form, onForm }: FormProps) => {
  const t = useText();
  return (
    <div className={styles.numbers}>
      {parts.map((part) => (
        <NumberField
          key={part}
          label={`${part}*`}
          unit=""
          text={form.texts[part]}
          wrong={isUnread(form.texts[part]) ? t("number.unread") : undefined}
          onText={(text) => onForm({ ...form, texts: { ...form.texts, [part]: text } })}
        />
      ))}
    </div>
  );
};

/** How the instrument lit the paint, and what paint it is. */
const Under = ({ form, onForm }: FormProps) => {
  const t = useText();
  return (
    <div className={styles.under}>
      <NativeSelect
        label={t("color.geometry")}
        value={form.geometry}
        data={geometries.map((one) => ({ value: one, label: t(`color.geometry.${one}`) }))}
        onChange={({ currentTarget: { value } }) =>
          onForm({ ...form, geometry: geometries.find((one) => one === value) ?? "45/0" })
        }
      />
      <Checkbox
        label={t("color.metallic")}
        checked={form.metallic}
        onChange={(event) => onForm({ ...form, metallic: event.currentTarget.checked })}
      />
    </div>
  );
};

export const ColorEditor = ({ answer, unread, onChange }: EditorProps<"color">) => {
  const t = useText();
  const [form, setForm] = useState(() => colorForm({ answer, unread }));
  const onForm = (next: ColorForm): void => {
    setForm(next);
    const made = madeOf(next);
    onChange(made.answer, made.unread);
  };
  return (
    <div className={styles.reading}>
      <Numbers form={form} onForm={onForm} />
      {madeOf(form).unread && <p className={styles.wrong}>{t("color.not-whole")}</p>}
      <Under form={form} onForm={onForm} />
    </div>
  );
};
