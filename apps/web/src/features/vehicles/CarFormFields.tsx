import { NativeSelect, NumberInput } from "@mantine/core";
import type { UseFormReturnType } from "@mantine/form";
import { VehicleForm } from "@evenhand/shared/report";
import type { MessageId } from "../../strings/en";
import { useText } from "../../strings/text";
import type { NewCarValues } from "./new-car";

const { body, construction, gearbox, driven, fuelSystem } = VehicleForm.shape;
const brake = VehicleForm.shape.brakes.shape.front;

type Form = UseFormReturnType<NewCarValues>;

/** A question about how a car is built, and what may be answered. */
interface Asked {
  readonly name: keyof NewCarValues;
  readonly label: MessageId;
  readonly answers: readonly { readonly value: string; readonly label: MessageId; readonly volts?: string }[];
}

const asked = <V extends string>(
  name: keyof NewCarValues,
  label: MessageId,
  values: readonly V[],
  idOf: (value: V) => MessageId,
): Asked => ({ name, label, answers: values.map((value) => ({ value, label: idOf(value) })) });

const bodyAsked = asked("body", "form.body", body.options, (value) => `form.body.${value}`);

const buildAsked: readonly Asked[] = [
  asked("construction", "form.construction", construction.options, (value) => `form.construction.${value}`),
  asked("gearbox", "form.gearbox", gearbox.options, (value) => `form.gearbox.${value}`),
  asked("driven", "form.driven", driven.options, (value) => `form.driven.${value}`),
  asked("fuelSystem", "form.fuelSystem", fuelSystem.options, (value) => `form.fuelSystem.${value}`),
  {
    name: "systemVolts",
    label: "form.volts",
    answers: ["12", "6"].map((volts) => ({ value: volts, label: "form.volts.are", volts })),
  },
  asked("front", "form.brakes.front", brake.options, (value) => `form.brake.${value}`),
  asked("rear", "form.brakes.rear", brake.options, (value) => `form.brake.${value}`),
  asked("drive", "form.drive", ["left", "right"] as const, (value) => `form.drive.${value}`),
];

/** A choice with nothing chosen beforehand. */
const Choice = ({ form, name, label, answers }: Asked & { readonly form: Form }) => {
  const t = useText();
  return (
    <NativeSelect
      size="md"
      label={t(label)}
      data={[
        { value: "", label: t("form.choose") },
        ...answers.map((one) => ({ value: one.value, label: t(one.label, { volts: one.volts ?? "" }) })),
      ]}
      {...form.getInputProps(name)}
    />
  );
};

/** How the car is built: what decides which lines of the sheet apply. */
export const CarFormFields = ({ form }: { readonly form: Form }) => {
  const t = useText();
  const counted = (name: "doors" | "cylinders", min: number, max: number) => (
    <NumberInput size="md" label={t(`form.${name}`)} min={min} max={max} {...form.getInputProps(name)} />
  );
  return (
    <>
      <Choice form={form} {...bodyAsked} />
      {counted("doors", 2, 5)}
      {counted("cylinders", 1, 16)}
      {buildAsked.map((one) => (
        <Choice key={one.name} form={form} {...one} />
      ))}
    </>
  );
};
