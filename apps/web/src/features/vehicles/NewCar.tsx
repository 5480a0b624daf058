import { Button, NativeSelect, NumberInput, TextInput } from "@mantine/core";
import { useForm } from "@mantine/form";
import { VehicleForm } from "@evenhand/shared/report";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { Link, useNavigate } from "@tanstack/react-router";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { organizationsOf, useAccount } from "../accounts/queries";
import styles from "./Car.module.css";
import { firstValues, vehicleOf, type NewCarValues } from "./new-car";

const { body, construction, gearbox, driven, fuelSystem } = VehicleForm.shape;
const brake = VehicleForm.shape.brakes.shape.front;

export const NewCar = () => {
  const t = useText();
  const account = useAccount();
  const navigate = useNavigate();
  const queries = useQueryClient();
  const firms = organizationsOf(account, "dealer");
  const form = useForm<NewCarValues>({
    initialValues: { ...firstValues, organization: firms[0]?.id ?? "" },
    validate: {
      make: (value) => (value.trim() === "" ? t("new-car.needed") : null),
      model: (value) => (value.trim() === "" ? t("new-car.needed") : null),
      identification: (value) => (value.trim() === "" ? t("new-car.needed") : null),
    },
  });
  const create = useMutation({
    mutationFn: (values: NewCarValues) => call("vehicles.create", { body: vehicleOf(values) }),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries({ queryKey: ["vehicles"] });
      await navigate({ to: "/cars/$vehicle", params: { vehicle: id } });
    },
  });
  const text = (name: "make" | "model" | "identification" | "market" | "words") => ({
    size: "md" as const,
    label: t(`new-car.${name}`),
    ...form.getInputProps(name),
  });
  return (
    <Page
      title={t("new-car.title")}
      under={t("new-car.what")}
      over={<Link to="/cars">{t("nav.cars")}</Link>}
      narrow
    >
      <form className={styles.form} onSubmit={form.onSubmit((values) => create.mutate(values))}>
        {create.error !== null && <ProblemNotice error={create.error} />}
        <Panel title={t("new-car.name")}>
          <div className={styles.fields}>
            {firms.length > 1 && (
              <NativeSelect
                size="md"
                label={t("new-car.organization")}
                data={firms.map(({ id, name }) => ({ value: id, label: name }))}
                {...form.getInputProps("organization")}
              />
            )}
            <TextInput {...text("make")} />
            <TextInput {...text("model")} />
            <NumberInput
              size="md"
              label={t("new-car.modelYear")}
              min={1886}
              max={2100}
              hideControls
              {...form.getInputProps("modelYear")}
            />
            <TextInput
              {...text("identification")}
              description={t("new-car.identification.hint")}
              autoCapitalize="characters"
              spellCheck={false}
            />
            <TextInput {...text("market")} />
            <TextInput
              size="md"
              inputMode="decimal"
              label={t("new-car.asking")}
              {...form.getInputProps("asking")}
            />
          </div>
          <TextInput {...text("words")} description={t("new-car.words.hint")} maxLength={400} />
        </Panel>
        <Panel title={t("new-car.form")} hint={t("new-car.form.hint")}>
          <div className={styles.fields}>
            <NativeSelect
              size="md"
              label={t("form.body")}
              data={body.options.map((value) => ({ value, label: t(`form.body.${value}`) }))}
              {...form.getInputProps("body")}
            />
            <NumberInput size="md" label={t("form.doors")} min={2} max={5} {...form.getInputProps("doors")} />
            <NumberInput
              size="md"
              label={t("form.cylinders")}
              min={1}
              max={16}
              {...form.getInputProps("cylinders")}
            />
            <NativeSelect
              size="md"
              label={t("form.construction")}
              data={construction.options.map((value) => ({ value, label: t(`form.construction.${value}`) }))}
              {...form.getInputProps("construction")}
            />
            <NativeSelect
              size="md"
              label={t("form.gearbox")}
              data={gearbox.options.map((value) => ({ value, label: t(`form.gearbox.${value}`) }))}
              {...form.getInputProps("gearbox")}
            />
            <NativeSelect
              size="md"
              label={t("form.driven")}
              data={driven.options.map((value) => ({ value, label: t(`form.driven.${value}`) }))}
              {...form.getInputProps("driven")}
            />
            <NativeSelect
              size="md"
              label={t("form.fuelSystem")}
              data={fuelSystem.options.map((value) => ({ value, label: t(`form.fuelSystem.${value}`) }))}
              {...form.getInputProps("fuelSystem")}
            />
            <NativeSelect
              size="md"
              label={t("form.volts")}
              data={["12", "6"].map((value) => ({ value, label: t("form.volts.are", { volts: value }) }))}
              {...form.getInputProps("systemVolts")}
            />
            <NativeSelect
              size="md"
              label={t("form.brakes.front")}
              data={brake.options.map((value) => ({ value, label: t(`form.brake.${value}`) }))}
              {...form.getInputProps("front")}
            />
            <NativeSelect
              size="md"
              label={t("form.brakes.rear")}
              data={brake.options.map((value) => ({ value, label: t(`form.brake.${value}`) }))}
              {...form.getInputProps("rear")}
            />
            <NativeSelect
              size="md"
              label={t("form.drive")}
              data={[
                { value: "left", label: t("form.drive.left") },
                { value: "right", label: t("form.drive.right") },
              ]}
              {...form.getInputProps("drive")}
            />
          </div>
        </Panel>
        <div className={styles.buttons}>
          <Button type="submit" size="md" loading={create.isPending}>
            {t("new-car.do")}
          </Button>
        </div>
      </form>
    </Page>
  );
};
