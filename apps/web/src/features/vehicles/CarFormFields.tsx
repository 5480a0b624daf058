import { NativeSelect, NumberInput } from "@mantine/core";
import type { UseFormReturnType } from "@mantine/form";
import { VehicleForm } from "@evenhand/shared/report";
import type { MessageId } from "../../strings/en";
import { useText } from "../../strings/text";
import type { NewCarValues } from "./new-car";

const { body, construction, gearbox, driven, fuelSystem } = VehicleForm.shape;
const brake = VehicleForm.shape.brakes.shape.front;

type Form = UseFormReturnType<NewCarValues>;
type Answer = { readonly value: string; readonly label: string };

/** A choice with nothing chosen beforehand. */
const Choice = (props: {
  readonly form: Form;
  readonly name: keyof NewCarValues;
  readonly label: MessageId;
  readonly answers: readonly Answer[];
}) => {
  const t = useText();
  return (
    <NativeSelect
      size="md"
      label={t(props.label)}
      data={[{ value: "", label: t("form.choose") }, ...props.answers]}
      {...props.form.getInputProps(props.name)}
    />
  );
};

/** How the car is built: what decides which lines of the sheet apply. */
export const CarFormFields = ({ form }: { readonly form: Form }) => {
  const t = useText();
  const brakes = brake.options.map((value) => ({ value, label: t(`form.brake.${value}`) }));
  const of = <V extends string>(options: readonly V[], id: (value: V) => MessageId): Answer[] =>
    options.map((value) => ({ value, label: t(id(value)) }));
  return (
    <>
      <Choice
        form={form}
        name="body"
        label="form.body"
        answers={of(body.options, (value) => `form.body.${value}`)}
      />
      <NumberInput size="md" label={t("form.doors")} min={2} max={5} {...form.getInputProps("doors")} />
      <NumberInput
        size="md"
        label={t("form.cylinders")}
        min={1}
        max={16}
        {...form.getInputProps("cylinders")}
      />
      <Choice
        form={form}
        name="construction"
        label="form.construction"
        answers={of(construction.options, (value) => `form.construction.${value}`)}
      />
      <Choice
        form={form}
        name="gearbox"
        label="form.gearbox"
        answers={of(gearbox.options, (value) => `form.gearbox.${value}`)}
      />
      <Choice
        form={form}
        name="driven"
        label="form.driven"
        answers={of(driven.options, (value) => `form.driven.${value}`)}
      />
      <Choice
        form={form}
        name="fuelSystem"
        label="form.fuelSystem"
        answers={of(fuelSystem.options, (value) => `form.fuelSystem.${value}`)}
      />
      <Choice
        form={form}
        name="systemVolts"
        label="form.volts"
        answers={["12", "6"].map((value) => ({ value, label: t("form.volts.are", { volts: value }) }))}
      />
      <Choice form={form} name="front" label="form.brakes.front" answers={brakes} />
      <Choice form={form} name="rear" label="form.brakes.rear" answers={brakes} />
      <Choice
        form={form}
        name="drive"
        label="form.drive"
        answers={of(["left", "right"] as const, (value) => `form.drive.${value}`)}
      />
    </>
  );
};
