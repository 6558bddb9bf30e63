import { bytesToHex, hexToBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import { ObjectIdentifier, OctetString, Sequence } from 'asn1js';
import {
  type Attribute,
  Certificate,
  CertificateChainValidationEngine,
  ContentInfo,
  CryptoEngine,
  ExtKeyUsage,
  SignedData,
  type SignerInfo,
  TSTInfo,
} from 'pkijs';
import { sha256Hex } from './sha256-hex.js';

/** What a time stamp says, and on whose word. */
export interface TimeStamp {
  /** RFC 3339. */
  readonly at: string;
  /** Object identifier of the rules under which the authority stamps. */
  readonly policy: string;
  readonly authority: string;
  /** Who issued the certificate of the authority. */
  readonly issuer: string;
  /** SHA-256 of that certificate. */
  readonly certificate: string;
  /** Whether it leads to a certificate that whoever checks trusts; null where they named none. */
  readonly trusted: boolean | null;
}

export type TimeStampCheck =
  { readonly ok: true; readonly stamp: TimeStamp } | { readonly ok: false; readonly problem: string };

/** What a check needs from where it runs. */
export interface StampTools {
  /** Web Cryptography, as Node.js and browsers bring it. */
  readonly crypto: ConstructorParameters<typeof CryptoEngine>[0]['crypto'];
  /** Certificates that whoever checks trusts, each in DER. */
  readonly roots: readonly Uint8Array[];
}

const SIGNED_DATA = '1.2.840.113549.1.7.2';
const TST_INFO = '1.2.840.113549.1.9.16.1.4';
const SHA_256 = '2.16.840.1.101.3.4.2.1';
const CONTENT_TYPE = '1.2.840.113549.1.9.3';
const EXTENDED_KEY_USAGE = '2.5.29.37';
const TIME_STAMPING = '1.3.6.1.5.5.7.3.8';

/**
 * Holds a time-stamp token against the text that it is to be of: imprint, signature over exactly that statement, the one
 * certificate that is bound to the signature and may do nothing but stamp, and that it was valid then (RFC 3161, 2.3 and
 * 2.4.2; RFC 5816). Whether the certificate is genuine only `roots` can say; whether it was revoked is not looked up.
 * @param token in DER, as hex
 */
export async function verifyTimeStamp(
  token: string,
  text: string,
  { crypto, roots }: StampTools,
): Promise<TimeStampCheck> {
  const engine = new CryptoEngine({ name: 'desk', crypto });
  const bytes = utf8ToBytes(text);
  try {
    const content = ContentInfo.fromBER(hexToBytes(token));
    if (content.contentType !== SIGNED_DATA) return fault('It is no time stamp.');
    const signed = new SignedData({ schema: content.content });
    const { eContentType, eContent } = signed.encapContentInfo;
    const [signer, more] = signed.signerInfos;
    if (eContentType !== TST_INFO || eContent === undefined) return fault('It is no time stamp.');
    if (signer === undefined || more !== undefined) return fault('It is not signed by one authority.');
    const info = TSTInfo.fromBER(eContent.getValue());
    const { hashAlgorithm, hashedMessage } = info.messageImprint;
    const imprint = bytesToHex(new Uint8Array(hashedMessage.valueBlock.valueHexView));
    if (hashAlgorithm.algorithmId !== SHA_256 || imprint !== sha256Hex(bytes))
      return fault('It is of something else.');
    const { signatureVerified, signerCertificate: certificate } = await signed.verify(
      { signer: 0, data: new Uint8Array(bytes).buffer, extendedMode: true },
      engine,
    );
    if (signatureVerified !== true || !certificate) return fault('Its signature does not fit.');
    if (!saysContentType(signer) || !(await isBound(signer, certificate, engine)))
      return fault('Its signature is not bound to the certificate that came with it.');
    if (!mayStampOnly(certificate)) return fault('Its certificate is not one for time stamps.');
    if (info.genTime < certificate.notBefore.value || info.genTime > certificate.notAfter.value)
      return fault('Its certificate was not valid at that time.');
    const others = (signed.certificates ?? []).filter(
      (one) => one instanceof Certificate && one !== certificate,
    );
    const trusted = await leadsToRoot(certificate, others as Certificate[], info.genTime, roots, engine);
    const stamp = {
      at: info.genTime.toISOString(),
      policy: info.policy,
      authority: nameOf(certificate.subject),
      issuer: nameOf(certificate.issuer),
      certificate: sha256Hex(derOf(certificate)),
      trusted,
    };
    return { ok: true, stamp };
  } catch (error) {
    // The library throws for whatever it cannot read; nothing that it cannot read counts.
    return fault(`It cannot be read: ${error instanceof Error ? error.message : String(error)}`);
  }
}

const fault = (problem: string): TimeStampCheck => ({ ok: false, problem });
const derOf = (certificate: Certificate): Uint8Array => new Uint8Array(certificate.toSchema().toBER());

function attributesOf({ signedAttrs }: SignerInfo, type: string): readonly Attribute[] {
  return (signedAttrs?.attributes ?? []).filter((one) => one.type === type);
}

/** The signature covers that what is signed is a time stamp and no other text (RFC 5652, 11.1). */
function saysContentType(signer: SignerInfo): boolean {
  const [one, more] = attributesOf(signer, CONTENT_TYPE);
  const said: unknown = one?.values[0];
  return more === undefined && said instanceof ObjectIdentifier && said.getValue() === TST_INFO;
}

/** The attributes that bind a certificate to its signature, with the hash each takes by default (RFC 2634, RFC 5035). */
const BINDINGS = [
  ['1.2.840.113549.1.9.16.2.47', 'SHA-256'],
  ['1.2.840.113549.1.9.16.2.12', 'SHA-1'],
] as const;
const HASHES: Readonly<Record<string, string>> = {
  [SHA_256]: 'SHA-256',
  '2.16.840.1.101.3.4.2.2': 'SHA-384',
  '2.16.840.1.101.3.4.2.3': 'SHA-512',
};

/** RFC 3161, 2.4.2: the signing certificate attribute must name the certificate, as another of the same key may exist. */
async function isBound(signer: SignerInfo, certificate: Certificate, engine: CryptoEngine): Promise<boolean> {
  const der = derOf(certificate);
  for (const [type, usual] of BINDINGS) {
    for (const attribute of attributesOf(signer, type)) {
      const [first, second] = partsOf(partsOf(partsOf(attribute.values[0])[0])[0]);
      const named = partsOf(first)[0];
      const hash = named instanceof ObjectIdentifier ? HASHES[named.getValue()] : usual;
      const said = first instanceof OctetString ? first : second;
      if (hash === undefined || !(said instanceof OctetString)) return false;
      const is = bytesToHex(new Uint8Array(await engine.digest(hash, new Uint8Array(der))));
      return is === bytesToHex(new Uint8Array(said.getValue()));
    }
  }
  return false;
}

function partsOf(value: unknown): readonly unknown[] {
  return value instanceof Sequence ? value.valueBlock.value : [];
}

/** RFC 3161, 2.3: one purpose alone, and marked as critical. */
function mayStampOnly({ extensions = [] }: Certificate): boolean {
  const usage = extensions.find(({ extnID }) => extnID === EXTENDED_KEY_USAGE);
  const purposes: unknown = usage?.parsedValue;
  if (usage?.critical !== true || !(purposes instanceof ExtKeyUsage)) return false;
  return purposes.keyPurposes.length === 1 && purposes.keyPurposes[0] === TIME_STAMPING;
}

async function leadsToRoot(
  certificate: Certificate,
  others: readonly Certificate[],
  checkDate: Date,
  roots: readonly Uint8Array[],
  engine: CryptoEngine,
): Promise<boolean | null> {
  if (roots.length === 0) return null;
  const trustedCerts = roots.map((der) => Certificate.fromBER(new Uint8Array(der)));
  const chain = new CertificateChainValidationEngine({
    trustedCerts,
    certs: [...others, certificate],
    checkDate,
  });
  return (await chain.verify({}, engine)).result;
}

/** `Unit 1, Invented Time Authority`: the common name, and of which organization. */
function nameOf({ typesAndValues }: Certificate['subject']): string {
  const part = (type: string): string[] =>
    typesAndValues.flatMap((one) => (one.type === type ? [String(one.value.getValue())] : []));
  return [...part('2.5.4.3'), ...part('2.5.4.10')].join(', ') || 'somebody without a name';
}
