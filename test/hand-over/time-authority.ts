import { execFileSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buffer } from 'node:stream/consumers';

/** Whether `openssl` can be run here. */
export function hasOpenssl(): boolean {
  try {
    return execFileSync('openssl', ['version'], { stdio: 'pipe' }).length > 0;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return false;
    throw error;
  }
}

const SETTINGS = `
[ req ]
distinguished_name = dn
prompt = no
[ dn ]
CN = Unit 1
O = Invented Time Authority
[ root ]
basicConstraints = critical, CA:TRUE
keyUsage = critical, keyCertSign
subjectKeyIdentifier = hash
[ stamp ]
basicConstraints = critical, CA:FALSE
keyUsage = critical, digitalSignature
extendedKeyUsage = critical, timeStamping
authorityKeyIdentifier = keyid
[ tsa ]
default_tsa = one
[ one ]
serial = ./serial
crypto_device = builtin
signer_cert = ./tsa.pem
certs = ./root.pem
signer_key = ./tsa.key
signer_digest = sha256
default_policy = 1.3.6.1.4.1.32473.1
digests = sha256
ess_cert_id_chain = no
ess_cert_id_alg = sha256
`;

type Answer = (query: Buffer, response: ServerResponse) => void;

/** A time-stamping authority on this machine, whose tokens `openssl ts` makes (RFC 3161, 3.4). */
export class TimeAuthority {
  /** What it does with the next questions. */
  answer: Answer = (query, response) => this.reply(response, this.stamp(query));

  private constructor(
    private readonly server: Server,
    private readonly folder: string,
  ) {}

  static async open(): Promise<TimeAuthority> {
    const folder = mkdtempSync(join(tmpdir(), 'desk-time-'));
    writeFileSync(join(folder, 'settings'), SETTINGS);
    writeFileSync(join(folder, 'serial'), '01\n');
    const server = createServer();
    const authority = new TimeAuthority(server, folder);
    for (const name of ['root', 'tsa']) {
      authority.openssl(
        'genpkey',
        '-algorithm',
        'EC',
        '-pkeyopt',
        'ec_paramgen_curve:P-256',
        '-out',
        `${name}.key`,
      );
    }
    const root = [
      '-key',
      'root.key',
      '-subj',
      '/CN=Invented Root',
      '-config',
      'settings',
      '-extensions',
      'root',
    ];
    authority.openssl('req', '-new', '-x509', '-days', '30', ...root, '-out', 'root.pem');
    authority.openssl('req', '-new', '-key', 'tsa.key', '-config', 'settings', '-out', 'tsa.csr');
    const issued = ['-CA', 'root.pem', '-CAkey', 'root.key', '-set_serial', '7', '-days', '30'];
    const kind = ['-extfile', 'settings', '-extensions', 'stamp'];
    authority.openssl('x509', '-req', '-in', 'tsa.csr', ...issued, ...kind, '-out', 'tsa.pem');
    server.on('request', (request, response) => {
      void buffer(request).then((query) => authority.answer(query, response));
    });
    server.listen(0, '127.0.0.1');
    await once(server, 'listening');
    return authority;
  }

  get url(): string {
    return `http://127.0.0.1:${(this.server.address() as AddressInfo).port}/stamp`;
  }

  get root(): Buffer {
    return readFileSync(join(this.folder, 'root.pem'));
  }

  /** The whole reply to a question. */
  stamp(query: Buffer): Buffer {
    writeFileSync(join(this.folder, 'query'), query);
    this.openssl('ts', '-reply', '-config', 'settings', '-queryfile', 'query', '-out', 'reply');
    return readFileSync(join(this.folder, 'reply'));
  }

  reply(response: ServerResponse, body: Buffer, type = 'application/timestamp-reply'): void {
    response.writeHead(200, { 'content-type': type }).end(body);
  }

  /** What `openssl ts -verify` says of a token over a text. */
  verify(token: Buffer, text: string): string {
    writeFileSync(join(this.folder, 'token'), token);
    writeFileSync(join(this.folder, 'text'), text);
    return this.openssl('ts', '-verify', '-token_in', '-in', 'token', '-data', 'text', '-CAfile', 'root.pem');
  }

  close(): void {
    this.server.closeAllConnections();
    this.server.close();
    rmSync(this.folder, { recursive: true });
  }

  private openssl(...args: string[]): string {
    return execFileSync('openssl', args, { cwd: this.folder, stdio: 'pipe' }).toString();
  }
}
