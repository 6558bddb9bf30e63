import { readFileSync } from 'node:fs';
import { X509Certificate } from 'node:crypto';

/**
 * Made with OpenSSL 3.0.19 (`openssl ts -reply`, and `openssl cms -sign` for those that `openssl ts -verify` refuses) by
 * invented authorities over head.txt.
 */
const FOLDER = 'fixtures/time-stamp';

/** The head as it is stamped: `17:abab…`. */
export const HEAD_TEXT = readFileSync(`${FOLDER}/head.txt`, 'utf8');

export const tokenOf = (name: string): string => readFileSync(`${FOLDER}/${name}.tst`).toString('hex');

export const rootOf = (name: string): Uint8Array =>
  new Uint8Array(new X509Certificate(readFileSync(`${FOLDER}/${name}.pem`)).raw);
