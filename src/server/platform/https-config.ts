import { readFileSync } from 'node:fs';
import { isIP } from 'node:net';
import { createSecureContext } from 'node:tls';

type Environment = Record<string, string | undefined>;

export interface Tls {
  readonly cert: string;
  readonly key: string;
}

/**
 * Reads TLS_CERT_FILE and TLS_KEY_FILE: both or neither, and a pair. What is wrong goes to `faults`.
 * @returns undefined when HTTPS is not ours to speak
 */
export function readTls(environment: Environment, faults: string[]): Tls | undefined {
  const [certFile, keyFile] = [environment['TLS_CERT_FILE'], environment['TLS_KEY_FILE']];
  if (certFile === undefined && keyFile === undefined) return undefined;
  if (certFile === undefined || keyFile === undefined) {
    const missing = certFile === undefined ? 'TLS_CERT_FILE' : 'TLS_KEY_FILE';
    faults.push(`${missing} is missing: HTTPS needs TLS_CERT_FILE and TLS_KEY_FILE together.`);
    return undefined;
  }
  const cert = readPem('TLS_CERT_FILE', certFile, faults);
  const key = readPem('TLS_KEY_FILE', keyFile, faults);
  if (cert === undefined || key === undefined) return undefined;
  try {
    createSecureContext({ cert, key });
    return { cert, key };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    faults.push(`TLS_CERT_FILE and TLS_KEY_FILE are no pair of certificate and key in PEM: ${reason}.`);
    return undefined;
  }
}

function readPem(variable: string, file: string, faults: string[]): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    faults.push(`${variable} cannot be read: ${reason}.`);
    return undefined;
  }
}

/**
 * Reads TRUSTED_PROXY: the addresses or networks from which a proxy of ours passes requests on, by commas. Whoever
 * comes from there is believed when naming the client and saying that it came by HTTPS; nobody else is.
 */
export function readTrustedProxy(environment: Environment, faults: string[]): string[] | undefined {
  const text = environment['TRUSTED_PROXY'];
  if (text === undefined) return undefined;
  const proxies = text.split(',').map((proxy) => proxy.trim());
  const strange = proxies.filter((proxy) => !isNetwork(proxy));
  if (strange.length === 0) return proxies;
  faults.push(
    `TRUSTED_PROXY holds ${JSON.stringify(strange[0])}: give addresses or networks such as 127.0.0.1 or 10.0.0.0/8, by commas.`,
  );
  return undefined;
}

/** A network of /0 would believe anyone. */
function isNetwork(text: string): boolean {
  const [address = '', bits, more] = text.split('/');
  const longest = isIP(address) === 6 ? 128 : 32;
  if (isIP(address) === 0 || more !== undefined) return false;
  return bits === undefined || (/^[1-9]\d{0,2}$/.test(bits) && Number(bits) <= longest);
}
