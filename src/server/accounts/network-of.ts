import { isIPv6 } from 'node:net';

/**
 * What counts as one place on the network: an IPv4 address, or the /64 of an IPv6 one, as a single household is given
 * at least that (RFC 6177) and could come from a new address each time.
 * @example networkOf('2001:db8:0:7::5') // '2001:db8:0:7::/64'
 * @example networkOf('::ffff:192.0.2.4') // '192.0.2.4'
 */
export function networkOf(address: string): string {
  const plain = address.replace(/^::ffff:(?=\d+\.)/i, '');
  if (!isIPv6(plain)) return plain;
  const [head = '', tail] = (plain.split('%')[0] ?? '').split('::');
  const groups = head === '' ? [] : head.split(':');
  const missing = tail === undefined ? 0 : 8 - groups.length - (tail === '' ? 0 : tail.split(':').length);
  const full = [...groups, ...Array.from({ length: missing }, () => '0'), ...(tail ?? '').split(':')];
  return `${full.slice(0, 4).join(':')}::/64`;
}
