import { z } from "zod";
import { ObjectId } from "../identifier.ts";
import { nameOf } from "../names.ts";
import { Zone } from "../zone.ts";
import { Created, Named, pageOf, PageQuery, type Contract } from "./paging.ts";

export const OrganizationName = nameOf(200);
export const OrganizationKind = z.enum(["dealer", "inspector", "operator", "buyer"]);

export const OrganizationSeen = z.strictObject({ id: ObjectId, name: z.string(), kind: OrganizationKind });
export type OrganizationSeen = z.infer<typeof OrganizationSeen>;

export const Organization = z.strictObject({
  id: ObjectId,
  name: z.string(),
  kind: OrganizationKind,
  /** Town and region, as shown. */
  place: z.string().nullable(),
  /** IANA zone. */
  zone: z.string(),
});
export type Organization = z.infer<typeof Organization>;

export const OrganizationRequest = z.strictObject({
  name: OrganizationName,
  kind: OrganizationKind,
  place: nameOf(200).optional(),
  zone: Zone.default("UTC"),
});
export type OrganizationRequest = z.infer<typeof OrganizationRequest>;

export const Member = z.strictObject({
  account: Named,
  email: z.string(),
  role: z.enum(["admin", "member"]),
});
export type Member = z.infer<typeof Member>;

/** An admitted inspection firm, as a buyer chooses among them. */
export const InspectorFirm = z.strictObject({
  id: ObjectId,
  name: z.string(),
  place: z.string().nullable(),
  zone: z.string(),
});
export type InspectorFirm = z.infer<typeof InspectorFirm>;

export const organizationContracts = {
  "organizations.list": { query: PageQuery, status: 200, answer: pageOf(Organization) },
  "organizations.create": { body: OrganizationRequest, status: 201, answer: Created },
  "organizations.members": { query: PageQuery, status: 200, answer: pageOf(Member) },
  "inspectors.list": { query: PageQuery, status: 200, answer: pageOf(InspectorFirm) },
} as const satisfies Record<string, Contract>;
