/**
 * Reads PUBLIC_ADDRESS, at which people outside open links that the desk sends them. Without it no links are sent: what
 * a request says of its own address can be made up by whoever sends it.
 * @param faults gets a sentence where it cannot be used
 */
export function readPublicAddress(
  environment: Record<string, string | undefined>,
  faults: string[],
): string | null {
  const text = environment['PUBLIC_ADDRESS']?.trim();
  if (!text) return null;
  const address = text.replace(/\/$/, '');
  if (/^https:\/\/[a-z0-9.-]+(:\d{1,5})?$/i.test(address) || OWN_MACHINE.test(address)) return address;
  faults.push(`PUBLIC_ADDRESS is ${JSON.stringify(text)}: give an address such as https://desk.example.com.`);
  return null;
}

/** To try it on one machine. */
const OWN_MACHINE = /^http:\/\/(localhost|127\.0\.0\.1)(:\d{1,5})?$/;
