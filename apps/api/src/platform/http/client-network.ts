import { isIPv4, isIPv6 } from "node:net";

const groupsIn = (part: string): string[] => (part === "" ? [] : part.split(":"));

/** The dotted end of an address (RFC 4291, 2.2.3) as two groups of hexadecimal digits. */
const withoutDots = (address: string): string =>
  address.replace(/(\d+)\.(\d+)\.(\d+)\.(\d+)$/, (_, ...bytes: string[]) => {
    const [a = 0, b = 0, c = 0, d = 0] = bytes.slice(0, 4).map(Number);
    return `${(a * 256 + b).toString(16)}:${(c * 256 + d).toString(16)}`;
  });

/** All eight groups of an IPv6 address, as numbers. */
function groupsOf(address: string): number[] {
  const [bare = ""] = withoutDots(address).split("%");
  const [head = "", tail] = bare.split("::");
  const [front, back] = [groupsIn(head), groupsIn(tail ?? "")];
  const between = tail === undefined ? 0 : 8 - front.length - back.length;
  return [...front, ...Array.from({ length: between }, () => "0"), ...back].map((group) =>
    parseInt(group, 16),
  );
}

/**
 * The network that one subscriber's requests come from: an IPv4 address as it is, and of an IPv6 address the first 64 bits, since
 * whoever has one address there has all of them (RFC 6177; RFC 4291, 2.5.4). An IPv4 address written as IPv6 counts as IPv4.
 *
 * @param address as the connection or a trusted proxy names it; what is no address stays as it is
 * @example clientNetwork("2001:db8:0:7::1") // "2001:db8:0:7::/64"
 * @example clientNetwork("::ffff:192.0.2.7") // "192.0.2.7"
 */
export function clientNetwork(address: string): string {
  if (isIPv4(address) || !isIPv6(address)) return address;
  const groups = groupsOf(address);
  const [, , , , , marker, high = 0, low = 0] = groups;
  if (groups.slice(0, 5).every((group) => group === 0) && marker === 0xffff)
    return [high >> 8, high & 255, low >> 8, low & 255].join(".");
  return `${groups
    .slice(0, 4)
    .map((group) => group.toString(16))
    .join(":")}::/64`;
}
