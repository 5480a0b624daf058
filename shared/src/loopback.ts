/**
 * Does this name lead to one's own machine and nowhere else? Names are not looked up: only what cannot lead elsewhere counts.
 *
 * @param host as in a URL or a `Host` header, without a port
 * @example isLoopback("[::1]") // true
 */
export const isLoopback = (host: string): boolean => /^(localhost|127(\.\d{1,3}){3}|\[?::1\]?)$/i.test(host);
