import type { Type } from "@nestjs/common";
import { AccountsModule } from "./accounts/index.ts";
import { OrganizationsModule } from "./organizations/index.ts";

/** Everything the service can do. */
export const capabilities: readonly Type[] = [AccountsModule, OrganizationsModule];
