import { array, assert, integer, pre, property } from "fast-check";
import { expect, test } from "vitest";
import { clientNetwork } from "../../apps/api/src/platform/http/client-network.ts";

test.each([
  ["192.0.2.7", "192.0.2.7"],
  ["::ffff:192.0.2.7", "192.0.2.7"],
  ["::ffff:c000:207", "192.0.2.7"],
  ["2001:db8:0:7::1", "2001:db8:0:7::/64"],
  ["2001:DB8:0:7:ffff:ffff:ffff:ffff", "2001:db8:0:7::/64"],
  ["fe80::1%eth0", "fe80:0:0:0::/64"],
  ["::1", "0:0:0:0::/64"],
  ["no address", "no address"],
])("%s is of the network %s", (address, network) => {
  expect(clientNetwork(address)).toBe(network);
});

const groups = array(integer({ min: 0, max: 0xffff }), { minLength: 8, maxLength: 8 });
const hex = (numbers: readonly number[]): string => numbers.map((each) => each.toString(16)).join(":");

test("two addresses are of one network exactly where their first 64 bits are the same", () => {
  assert(
    property(groups, groups, (one, other) => {
      pre(one.slice(0, 4).some((each) => each > 0) && other.slice(0, 4).some((each) => each > 0));
      const moved = [...one.slice(0, 4), ...other.slice(4)];
      expect(clientNetwork(hex(moved))).toBe(clientNetwork(hex(one)));
      const same = hex(one.slice(0, 4)) === hex(other.slice(0, 4));
      expect(clientNetwork(hex(other)) === clientNetwork(hex(one))).toBe(same);
    }),
    { numRuns: 1_000 },
  );
});
