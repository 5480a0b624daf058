import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { useAccount } from "../../entities/account/queries";
import { appointmentsQuery } from "../../entities/appointment/queries";
import { useCarName } from "../../entities/car/CarName";
import { carsQuery } from "../../entities/car/queries";
import { useTimes } from "../../entities/time/use-times";
import { aboutOf, begunComplaint, withPart, type ComplaintForm, type Kind } from "./complaint-form";

/** What a complaint of a kind can be about, by name. */
const useSubjects = (kind: Kind) => {
  const name = useCarName();
  const times = useTimes();
  const cars = useInfiniteQuery(carsQuery(undefined)).data ?? [];
  const visits = useInfiniteQuery(appointmentsQuery()).data ?? [];
  if (kind === "vehicle") return cars.map((car) => ({ value: car.id, label: name(car) }));
  if (kind === "appointment") {
    return visits.map(({ id, start, zone, site }) => ({
      value: id,
      label: `${times.full(start, zone)}, ${site.name}`,
    }));
  }
  return [];
};

/** A complaint being written, and sending it. */
export const useComplaining = () => {
  const queries = useQueryClient();
  const account = useAccount();
  const organizations = account?.memberships.map(({ organization }) => organization) ?? [];
  const [form, setForm] = useState(() => begunComplaint(organizations[0]?.id ?? ""));
  const subjects = useSubjects(form.kind);
  const about = aboutOf(form, subjects[0]?.value);
  const send = useMutation({
    mutationFn: () =>
      call("complaints.create", {
        body: { organization: form.organization, about, text: form.text.trim() },
      }),
    onSuccess: async () => {
      setForm((now) => withPart(now, { text: "" }));
      await queries.invalidateQueries({ queryKey: ["complaints"] });
    },
  });
  const change = (part: Partial<ComplaintForm>): void => setForm((now) => withPart(now, part));
  return { organizations, subjects, form, subject: about.id, change, send };
};
