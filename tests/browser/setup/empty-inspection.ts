import { sheetIndex } from "../../../apps/web/src/entities/sheet/sheet-index.ts";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { acceptOrder, order } from "../../api/setup/story.ts";
import type { Service } from "../../api/setup/service.ts";
import { demoPeople, demoReport, headerOf, stateDemoCar } from "./demo-car.ts";

export const index = sheetIndex(sheetVersion1);
export const keyOf = ({ item, position }: { readonly item: string; readonly position: string }): string =>
  `${item}@${position}`;

/** An accepted inspection with its instruments named, and nothing found yet. */
export async function emptyInspection(service: Service) {
  const people = await demoPeople(service);
  const car = await stateDemoCar(people, "sovrano");
  const { buyer, inspector } = people;
  const orderId = await order(buyer, inspector, car.vehicle, car.statement);
  await acceptOrder(inspector, orderId);
  const found = demoReport("sovrano-inspection");
  const { id } = await inspector.does("reports.inspect", { path: { id: orderId }, body: headerOf(found) });
  return { inspector, id, found, address: `/reports/${id}` };
}
