import { Inject, Injectable } from "@nestjs/common";
import { HttpAdapterHost } from "@nestjs/core";
import { CONFIG, type Config } from "../config/index.ts";

/**
 * Where people reach the service: the configured address; without one, this machine's own, since the service then listens to
 * nobody else. Never what a request says of itself, which whoever sends it chooses.
 */
@Injectable()
export class SiteAddress {
  constructor(
    @Inject(CONFIG) private readonly config: Config,
    private readonly adapters: HttpAdapterHost,
  ) {}

  /** Without a slash at its end. */
  get base(): string {
    const { publicUrl, host, port } = this.config.http;
    if (publicUrl !== null) return publicUrl;
    return `http://${host.includes(":") ? `[${host}]` : host}:${this.listensAt() ?? port}`;
  }

  /** The port in use, which is another than the configured one where that was taken. */
  private listensAt(): number | null {
    const server: unknown = this.adapters.httpAdapter.getHttpServer();
    if (typeof server !== "object" || server === null || !("address" in server)) return null;
    const { address } = server;
    const found: unknown = typeof address === "function" ? address.call(server) : null;
    if (typeof found !== "object" || found === null || !("port" in found)) return null;
    return typeof found.port === "number" ? found.port : null;
  }
}
