import { afterAll } from "vitest";
import { closePools } from "./database.ts";

afterAll(closePools);
